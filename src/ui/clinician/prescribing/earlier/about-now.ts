/** What stands now of the exercise that is chosen, above the figures of its new dose. */
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import type { Method } from '#core/prescribing/methods.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import type { Version } from '../../answers.ts';
import { today } from '../../when.ts';
import { goneInWords, loadsThereInWords } from '../place/machines.ts';
import type { PrescribeProps } from '../prescribe-screen.tsx';
import { signedInWords } from '../version-view.tsx';
import { earlierInWords } from './earlier-doses.ts';

type NowProps = Pick<PrescribeProps, 'patient' | 'clock' | 'prescriptions' | 'machines' | 'at' | 'earlier'>;

/** In force by the same method on the same side, though what is set here began as an exercise of its own. */
const sameInForce = ({ prescriptions, at }: NowProps, method: Method): Version | undefined =>
  prescriptions.inForce.find(
    ({ dose }) =>
      dose.method === method && dose.exerciseId === at.exerciseId && (!at.side || dose.side === at.side),
  );

const standingOf = (props: NowProps, version: Version | null, method: Method): string => {
  const same = version ?? sameInForce(props, method);
  if (!same) return say(method === 'occlusion' ? 'now.all-asked' : 'now.none');
  const said = { version: same.version, signed: signedInWords(same, props.clock) };
  return say(version ? 'now.from' : 'now.same', said);
};

export const aboutNow = (props: NowProps, version: Version | null, method: Method): readonly string[] => {
  const { patient, clock, prescriptions, machines, at } = props;
  const loads = patient.profile?.ownedLoadsKg ?? [];
  const waiting = prescriptions.unsigned.filter(({ itemId }) => itemId === version?.itemId);
  return [
    ...waiting.map(({ dose }) => say('now.waits', { dose: doseInShort(dose) })),
    standingOf(props, version, method),
    ...earlierInWords(props.earlier, today(clock)),
    ...(version ? goneInWords(machines, version.dose) : []),
    ...(method === 'occlusion' ? [] : loadsThereInWords(machines, at.exerciseId ?? '', loads)),
  ];
};
