/** What a new clinic settles before its first patient, and what follows while it is open. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'Before the first patient',
  lead: '{open} of {all} are open. This list goes when all are done.',
  open: 'Open',
  done: 'Done',
  'clinic-numbers': 'Clinic name, telephone and urgent number',
  'clinic-numbers.done': 'All three are entered.',
  'clinic-numbers.open': 'Not entered: {missing}.',
  'follows.clinic-numbers':
    'Without an urgent number, phones show the emergency number to somebody who reaches nobody at the clinic.',
  'do.clinic-numbers': 'Enter what is missing',
  'missing.name': 'name',
  'missing.phone': 'telephone',
  'missing.urgent-number': 'urgent number',
  'monitoring-hours': 'Monitoring hours',
  'monitoring-hours.done': 'The hours are entered.',
  'monitoring-hours.open': 'No hours are entered.',
  'follows.monitoring-hours': 'Patients are told no times at which somebody reads what they send.',
  'do.monitoring-hours': 'Enter the hours',
  'second-clinician': 'A second clinician',
  'second-clinician.done': '{count} clinicians can sign in.',
  'second-clinician.none': 'No clinician can sign in.',
  'second-clinician.one': 'One clinician can sign in.',
  'follows.second-clinician':
    'When the only clinician is away, nobody can answer a warning sign or sign a dose.',
  'do.second-clinician': 'Add a clinician',
  'covering-clinician': 'Covering clinician',
  'covering-clinician.named': '{name} takes over urgent items that nobody acknowledges in time.',
  'covering-clinician.nobody': 'Nobody is named.',
  'covering-clinician.left': '{name} is named and can no longer sign in.',
  'follows.covering-clinician': 'An urgent item that nobody acknowledges in time passes to nobody.',
  'do.covering-clinician': 'Name somebody',
  'consent-wording': 'Consent wording',
  'consent-wording.done': 'All {all} wordings are your clinic’s own.',
  'consent-wording.open': '{own} of {all} wordings are your clinic’s own.',
  'follows.consent-wording':
    'Patients are asked to consent to proposed words that nobody at your clinic has approved.',
  'do.consent-wording': 'Write or take over the wording',
} as const;

export const say = sayIn(words);
