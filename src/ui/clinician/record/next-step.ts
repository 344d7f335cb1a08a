/** The next thing to do for a person in words, with the page it is done on. */
import { jointInWords } from '#core/review/plain-words.ts';
import { say as sayVisit } from '#messages/en/staff/first-visit.ts';
import { say } from '#messages/en/staff/record/next-step.ts';
import type { NextStep, WorklistItemKind } from '../answers.ts';
import { hrefOf } from '../worklist/item-place.ts';
import type { RecordPath } from './places.ts';

type Setup = Extract<NextStep, { readonly because: 'setup' }>['step'];
type Said = Exclude<Parameters<typeof say>[0], 'about' | 'first-visit'>;

const ofSetup: Readonly<Record<Setup, readonly [Said, RecordPath]>> = {
  screen: ['screen', '/screening'],
  'ask-consent': ['ask-consent', '/care'],
  'follow-joint': ['follow-joint', ''],
  'set-baseline': ['set-baseline', '/review'],
};

const ofItem: Readonly<Record<WorklistItemKind, Said>> = {
  'red-flag': 'record-contact',
  pause: 'record-contact',
  'same-day-contact': 'ring-today',
  'danger-passed': 'record-contact',
  'eased-twice': 'speak',
  'dose-stopped': 'speak',
  'floor-reached': 'speak',
  'entry-conflict': 'settle-entries',
  'ease-back': 'answer-ease-back',
  'resume-due': 'resume',
  'awaiting-signature': 'sign',
  'clock-doubtful': 'check-clock',
  'missing-answers': 'ask-for-answers',
  message: 'reply',
  'reported-new': 'read-news',
  'event-review': 'screen-after-event',
  'pre-visit-answers': 'confirm-answers',
  'phase-due': 'phase-due',
  'limit-ended': 'limit-ended',
  'routine-contact': 'review',
  'review-day': 'review-booked',
  'break-over': 'record-return',
  'screening-due': 'screen-again',
  'override-ended': 'override-ended',
  'pressure-due': 'measure-pressure',
  'retest-due': 'retest',
  'baseline-due': 'baseline-due',
};

/** The address is the item's own, as on the worklist. */
export const nextStepInWords = (
  patientId: string,
  next: NextStep,
): { readonly text: string; readonly href: string } => {
  if (next.because === 'first-visit')
    return {
      text: say('first-visit', { step: sayVisit(`step.${next.step}`) }),
      href: `/patients/${patientId}/care/first-visit?step=${next.step}`,
    };
  const joint = next.joint ? jointInWords(next.joint) : null;
  const [key, href] =
    next.because === 'setup'
      ? [ofSetup[next.step][0], `/patients/${patientId}${ofSetup[next.step][1]}`]
      : [
          ofItem[next.kind],
          hrefOf(patientId, { ...next, facts: next.measure ? { measure: next.measure } : {} }),
        ];
  return { text: joint ? say('about', { what: say(key), 'joint-name': joint }) : say(key), href };
};
