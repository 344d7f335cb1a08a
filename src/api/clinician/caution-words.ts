/** What goes to the patient with a dose, in English, beside the clinic's own words for it. */
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import { cautionText } from '#messages/cautions.ts';

export interface ShownCaution extends Caution {
  readonly toPatient: string;
}

/** A dose for the screens: each of its cautions as the patient reads it, too. */
export const withPatientWords = <Row extends { readonly cautions: readonly Caution[] }>(row: Row) => ({
  ...row,
  cautions: row.cautions.map(
    (caution): ShownCaution => ({ ...caution, toPatient: cautionText(caution.patient).en }),
  ),
});
