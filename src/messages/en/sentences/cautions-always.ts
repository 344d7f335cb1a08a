/** What every prescription carries, what nobody has checked, and limits. */
import type { AlwaysCautionId, UncheckedThing } from '#core/prescribing/cautions/ids.ts';
import type { LimitedBy } from '#core/prescribing/cautions/patient-caution.ts';

export const alwaysCautions = {
  'clinician-decides':
    'Your clinician and the rules where you live come first. If they differ from this page, follow them.',
  'stop-signs':
    'Stop and call emergency care if you have chest pain, cannot get your breath, or faint. Do the same for a very bad headache or a change in your sight. Do the same if you lose feeling between the legs or control of bladder or bowel.',
  'same-day-signs':
    'Stop and ring us the same day if a joint turns hot and swollen, or a calf hurts or swells. Do the same if your urine is dark like tea, or you have a fever. Do the same if an arm or leg turns weak or cannot take weight, or you fall and hurt yourself.',
} as const satisfies Readonly<Record<AlwaysCautionId, string>>;

export const unchecked = {
  'not-checked': 'Nobody has checked: {things}. If you worry about one of these, ask before you start.',
  clots: 'blood clots that give no signs',
  'heart-under-effort': 'your heart during effort',
  'bone-strength': 'how strong your bones are',
  'movement-at-home': 'how you move at home',
  'health-questions': 'your answers about your health',
  'blood-pressure': 'your blood pressure',
  'vessels-by-imaging': 'the blood vessels from inside',
  'ankle-brachial-index': 'the blood flow to your foot',
  'wrap-pressure': 'how hard the wrap presses',
} as const satisfies Readonly<Record<UncheckedThing | 'not-checked', string>>;

export const limits = {
  'weight-bearing':
    'There is a limit for your {joint:label}: weight-bearing. Keep to it as {author} told you.',
  range: 'There is a limit for your {joint:label}: range of movement. Keep to it as {author} told you.',
  'load-limit': 'There is a limit for your {joint:label}: load. Keep to it as {author} told you.',
  'load-limit-kg':
    'There is a limit for your {joint:label}: a load of {kg} kg at most. Keep to it as {author} told you.',
  'load-limit-kg-none':
    'There is a limit for your {joint:label}: a load of {kg} kg at most, as {author} told you. This exercise is done without a weight: add none.',
  'no-impact': 'There is a limit for your {joint:label}: impact. Keep to it as {author} told you.',
  'bears-none': 'Put no weight through your {joint:label}, as {author} told you.',
  'bears-touch':
    'Put almost no weight through your {joint:label}: it may touch, but not carry you, as {author} told you.',
  'bears-partial': 'At most {kg} kg of your weight may go through your {joint:label}, as {author} told you.',
  'bears-as-tolerated':
    'Put only as much weight through your {joint:label} as it bears well, as {author} told you.',
} as const satisfies Readonly<Record<LimitedBy, string>>;
