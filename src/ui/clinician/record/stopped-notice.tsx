/** Said over plan and summary where something stands above every dose on the page. */
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/record.ts';
import { Notice } from '#ui/design-system/notice.tsx';
import type { PatientBarAnswer } from '../answers.ts';

type State = PatientBarAnswer['state'];

const stoppedInWords = (state: State): string | null => {
  switch (state.state) {
    case 'warning-sign':
    case 'paused':
    case 'on-break':
    case 'closed':
      return say(`stopped.${state.state}`);
    case 'joint-paused':
      return say('stopped.joint-paused', { 'joint-name': jointInWords(state.joint) });
    default:
      return null;
  }
};

export const StoppedNotice = ({ state }: { readonly state: State }) => {
  const text = stoppedInWords(state);
  return text ? <Notice tone={state.state === 'warning-sign' ? 'danger' : 'care'} title={text} /> : null;
};
