/** What a clinician shows a patient of protein and energy. Append-only; the newest row counts. */
import { sql } from 'drizzle-orm';
import { kit, words } from './kit.ts';
import { clinic, patient } from './people.ts';

const acts = ['shown', 'withdrawn'] as const;

export const nutritionAdvice = kit.appendOnly(
  'nutrition_advice',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    act: kit.word('act', acts),
    proteinLowG: kit.wholeOrNull('protein_low_g'),
    proteinHighG: kit.wholeOrNull('protein_high_g'),
    meals: kit.wholeOrNull('meals'),
    surplusKcal: kit.wholeOrNull('surplus_kcal'),
    words: kit.textOrNull('words'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.index('nutrition_advice_by_patient').on(t.patientId, t.recordedAt),
    kit.check('nutrition_advice_act', sql`${t.act} IN (${words(acts)})`),
    kit.check(
      'nutrition_advice_figures',
      sql`(${t.act} = 'withdrawn') = (${t.proteinLowG} IS NULL) AND (${t.proteinLowG} IS NULL) = (${t.proteinHighG} IS NULL) AND (${t.proteinLowG} IS NULL) = (${t.meals} IS NULL)`,
    ),
    kit.check(
      'nutrition_advice_order',
      sql`${t.proteinLowG} IS NULL OR ${t.proteinLowG} <= ${t.proteinHighG}`,
    ),
  ],
);
