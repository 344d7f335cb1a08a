/** Templates of the clinic: saving doses as one, using one for a patient, and the page of them all. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'Templates of the clinic',
  about:
    'Doses saved under a name of your own. A template only fills in what is asked for: each dose is worked out anew for the patient, with screening, limits, things at home and cautions, and shown before it is signed.',
  'not-kept':
    'Not part of a template: loads in kg, maxima, pressures in mmHg, weekdays, and anything of the patient. A load is worked out from each patient’s own test, or typed.',
  none: 'No template is offered now. Doses in force are saved as one on a patient’s Plan page.',
  offered: { by: 'count', one: '{count} template', other: '{count} templates' },
  'saved-by': 'Saved by {name}, {time}.',
  'renamed-by': 'Named “{before}” until {time}; renamed by {name}.',
  'withdrawn-by': 'Withdrawn by {name} on {time}.',
  withdrawn: 'Withdrawn',
  'withdrawn.none': 'No template was withdrawn.',
  name: 'Name of the template',
  rename: 'Rename',
  renamed: 'Renamed.',
  withdraw: 'Withdraw',
  'withdraw.summary': 'Withdraw it',
  'withdraw.about':
    'It is no longer offered. It stays on this page, and doses signed from it stay as they are.',
  'withdraw.done': 'Withdrawn.',
  'bring-back': 'Offer it again',
  'bring-back.done': 'It is offered again.',
  'save.summary': 'Save doses as a template of the clinic',
  'save.which': 'Doses that belong to it',
  save: 'Save the template',
  'save.done': 'Saved. It is offered on the page Prescribe.',
  'pick.heading': 'Templates of the clinic: {count}',
  'pick.none': 'None saved yet. Doses in force are saved as one on the Plan page.',
  'pick.manage': 'Rename or withdraw a template',
  'pick.left': 'left',
  'pick.right': 'right',
  'pick.saved': 'sides as saved',
  'pick.use': 'Use',
  'use.heading': 'From the template “{name}”',
  'use.about': 'Worked out for this patient today. Nothing is kept before you add it.',
  'use.gone': 'That template was withdrawn, or is none of this clinic.',
  'use.close': 'Leave the template',
  'use.left-out': 'Left out, and why',
  'use.complete': 'Open it in the form of a dose',
  'use.none': 'No dose of it is possible for this patient now.',
  'use.add': {
    by: 'count',
    one: 'Add {count} dose to sign together',
    other: 'Add {count} doses to sign together',
  },
  'use.adding': 'Adding…',
  'use.filled': 'Filled in from the template “{name}”. It is proposed and shown like any other dose.',
  'dose.sets': '{sets} × {repetitions}',
  'dose.reserve': '{count} in reserve',
  'dose.percent': '{percent} % of the occlusion pressure',
  'dose.tightness': 'wrap at tightness {count} of 10',
} as const;

export const say = sayIn(words);
