/** What was found of one joint in an appointment at a distance. */
import { partsOfGuide, waysBy } from '#core/episode/distance/guide.ts';
import { fieldsOfGuide } from '#core/episode/distance/guide-fields.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { say } from '#messages/en/staff/episode/distance.ts';
import { listFrom, ofPatient, type SentForm } from './sent-form.ts';

export const recordDistance: SentForm = {
  name: 'distance',
  /** `locked`: parts that a limit closes, as the page knew them; the procedure looks again. */
  about: ['patientId', 'visitId', 'joint', 'place', 'locked'],
  prefix: ({ joint }) => `distance-${joint}-`,
  fields: ({ place = '', locked }) =>
    fieldsOfGuide(
      partsOfGuide
        .filter((part) => !listFrom(locked).includes(part))
        .map((part) => ({ part, ways: waysBy(place) })),
    ),
  page: (about) => `/patients/${ofPatient(about)}/care/appointments`,
  taken: say('kept'),
  send: ({ clinician }, { about, value: findings }) =>
    clinician.distance.record.mutate({
      patientId: ofPatient(about),
      visitId: about.visitId ?? '',
      joint: about.joint as Joint,
      findings,
    }),
};
