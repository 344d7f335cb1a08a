/** What was decided, and why. */
import type { DecisionWord } from '#core/decision/answers.ts';
import type { LeftOutRule } from '#core/decision/left-out.ts';
import type { RuleSentence } from '#core/decision/patient-sentence.ts';

export const decisions = {
  progress: 'Your answers allow a little more, once your physiotherapist agrees.',
  hold: 'Stay where you are: do the same again next time.',
  'ease-back': 'Do a little less next time.',
  pause: 'Stop your exercises until we have spoken with you.',
} as const satisfies Readonly<Record<DecisionWord, string>>;

export const rules = {
  R1: 'Stop and ask for help now. You told us of a sign that a person must look at first.',
  P1: 'Your pain was very strong, so do less and speak with us today.',
  'P1-near-usual': 'Your pain was strong, though near your usual. Do less; we will talk this week.',
  P1x: 'Your pain was far above your usual. Stop your exercises and speak with us today.',
  P2: 'Your pain went higher than we want it to go, so do a little less.',
  P3: 'The joint was sore before you began, so today is for the easier session.',
  P3b: 'The joint was sorer than usual before you began, so stay where you are.',
  P4: 'The joint hurt while you trained, so stay where you are.',
  P5: 'The joint was clearly sorer than usual on more than one morning, so do a little less.',
  'P5-once': 'The joint was still sorer than usual the next morning, so do a little less.',
  'P5-later': 'The joint was still sorer than usual on the first morning you answered, so do a little less.',
  P5h: 'The joint was sorer than usual the next morning, so stay where you are.',
  'P5h-later': 'The joint was sorer than usual on the first morning you answered, so stay where you are.',
  P5r: 'Your mornings have been sorer than usual for a while. Stay where you are; we will look at it with you.',
  P6: 'Two hours later the joint was clearly sorer than usual, so do a little less.',
  P6h: 'Two hours later the joint was a little sorer than usual, so stay where you are.',
  P7: 'Your mornings have been sorer than usual all week, so do a little less.',
  P7h: 'Your mornings have been a little sorer this week, so stay where you are.',
  B0: 'We are still learning how your joint usually is, so stay where you are for now.',
  B0r: 'We go by the usual pain you told us. Until your mornings confirm it, only a few more repetitions, no more weight.',
  B1: 'It is time for us to look again at how your joint usually is.',
  B2: 'Your joint has been better than before, so we want to look again before you do more.',
  B3: 'Your usual pain is higher than when we began. Stay where you are until we have looked at it together.',
  W3: 'The joint is far more swollen than usual. Rest it and speak with us today.',
  W2: 'The joint is clearly more swollen than usual. Rest it today; afterwards do a little less.',
  W1s: 'The joint is a little more swollen than usual, so stay where you are.',
  S1: 'There is a lot of fluid in the joint. Rest it and speak with us today.',
  S2: 'The fluid in the joint has not gone down. Rest it and speak with us today.',
  S2f: 'There is fluid in the joint. Rest it until it has gone down; then do a little less.',
  S3: 'There is a little fluid in the joint, so stay where you are.',
  T1: 'The joint stayed stiff far longer than usual, so do a little less.',
  T2: 'The joint stayed stiff longer than usual, so stay where you are.',
  F1: 'This flare is lasting longer than most. Keep the joint moving with the easier session; we will talk this week.',
  'F1-rest': 'This flare has lasted longer than most. Rest the joint until we have spoken.',
  F1i: 'Your flare goes on, so do less and let us know.',
  F2: 'You are in a flare, so do less until it has passed.',
  W1: 'Your body as a whole is having a hard time, so stay where you are.',
  C1: 'You had to stop early because of the joint, so do a little less.',
  C2: 'Not all repetitions were done, so stay where you are.',
  C3: 'The sets were harder than planned, so stay where you are.',
  C4: 'Let us see this dose done as planned a little longer before a bigger step.',
  A1: 'Some sessions were missed, so stay where you are until they are regular again.',
  A2: 'After a break it is best to start again with a little less.',
  M1: 'We do not have all your answers yet, so stay where you are.',
  M1r: 'We go by the first morning you did answer. Only a few more repetitions this time.',
  X1: 'Your mornings seem to be getting slowly sorer, so stay where you are.',
  D1: 'Extra pain relief can hide how the joint is, so stay where you are.',
  D2: 'Your treatment changed lately, so stay where you are while it settles.',
  D3: 'You did more than planned. Keep to the plan for now; tell us if it feels too easy.',
  D4: 'The joint gave way, so stay where you are and let us know.',
} as const satisfies Readonly<Record<RuleSentence, string>>;

/** Why a dose is held where a question was left open: what was not said is never told as said. */
export const leftOut = {
  D1: 'You left out whether you took extra pain relief, so your dose stays the same.',
  D3: 'You left out whether you did more than planned, so your dose stays the same.',
  D4: 'You left out whether the joint gave way, so your dose stays the same.',
  C3: 'You left out how many more you could have done, so your dose stays the same.',
} as const satisfies Readonly<Record<LeftOutRule, string>>;
