/** The doses in force of somebody become a template of the clinic. */
import { templateDoseOf } from '#core/prescribing/clinic-template.ts';
import { requestOfDose } from '#core/prescribing/request-of-dose.ts';
import type { Access } from '#data/access.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { addTemplate } from '#data/prescribing/dose-templates.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';

export interface TemplateAct {
  readonly does: 'keep-as-template';
  readonly name: string;
}

export const keepsAsTemplate = async (
  access: Access,
  patientId: string,
  { name }: TemplateAct,
): Promise<void> => {
  const measurements = await measurementsOf(access, patientId);
  const doses = inForce(await prescriptionsOf(access, patientId)).map(({ dose }) =>
    templateDoseOf(dose.method, requestOfDose({ measurements }, dose)),
  );
  await addTemplate(access, patientId, { name, doses });
};
