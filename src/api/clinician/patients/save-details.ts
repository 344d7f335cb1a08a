/** Changed details at the border: a colleague's change in between is a conflict that names whose it was. */
import { Problem, refusedWith } from '#api/errors.ts';
import { type DetailChange, detailInWords, type PatientDetail } from '#core/record/patient-details.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import { changeDetails, detailsOf } from '#data/patients/patient-details.ts';
import { clinicOf } from '#data/patients/people.ts';

/** By these somebody is rung in danger: none is taken away without asking. */
const numbersToRing: readonly PatientDetail[] = ['phone', 'emergencyPhone'];

const requireEmptyingMeant = async (
  access: Access,
  patientId: string,
  changes: readonly DetailChange[],
): Promise<void> => {
  const emptied = changes.filter(({ detail, value }) => numbersToRing.includes(detail) && !value?.trim());
  if (emptied.length === 0) return;
  const known = await detailsOf(access, patientId);
  const questions = emptied
    .flatMap(({ detail }) => known.find((one) => one.detail === detail && one.value !== null) ?? [])
    .map(
      ({ detail, value }) =>
        `“${detailInWords(detail)}” would be left empty; it is ${value} now. Is it to be taken away?`,
    );
  if (questions.length > 0) throw new Problem('not-confirmed', questions.join(' '), { questions });
};

/** The details that are now other than before. */
export const saveDetails = async (
  access: Access,
  patientId: string,
  changes: readonly DetailChange[],
  isConfirmed: boolean,
): Promise<readonly PatientDetail[]> => {
  if (!isConfirmed) await requireEmptyingMeant(access, patientId, changes);
  const outcome = await changeDetails(access, patientId, changes);
  if (outcome.ok) return outcome.changed;
  if ('refused' in outcome) throw refusedWith(outcome.refused);
  const zone = (await clinicOf(access.store, access.clinicId))?.zone ?? 'UTC';
  const lines = outcome.overtaken.map(
    ({ detail, byName, recordedAt }) =>
      `“${detailInWords(detail)}” was changed by ${byName} on ${dayInWords(dayAt(recordedAt, zone))}, after you opened this page.`,
  );
  throw new Problem(
    'conflict',
    [...lines, 'Nothing was saved. Load the page again, look at it, then change it.'].join(' '),
  );
};
