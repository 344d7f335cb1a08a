'use client';
/** What is known of a patient for dosing. Saving makes a new version; the earlier ones are kept. */
import { useRouter } from 'next/navigation';
import { equipmentKinds } from '#core/exercises/equipment.ts';
import { careProfileFields } from '#core/record/staff-fields.ts';
import type { Patient } from '../answers.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';
import { typedFrom } from '../forms/typed.ts';

export const CareProfileForm = ({ patient }: { readonly patient: Patient }) => {
  const router = useRouter();
  const { version: _version, ...known } = patient.profile ?? { version: 0 };
  return (
    <FormFrame
      prefix="profile-"
      fields={careProfileFields}
      start={typedFrom(known)}
      several={{ ownedEquipment: equipmentKinds }}
      label="Save the care profile"
      taken="Saved as a new version."
      hints={{
        followedJoints: 'One or two. The patient is asked about these at each session and each morning.',
        swellingNotAsked:
          'Of the joints followed, those on which swelling cannot be seen or felt, such as a hip or the spine. Missing answers there do not hold the dose.',
        ownedLoadsKg: 'In kg, separated by spaces, such as 1 2 3 4.5. Doses are rounded to these.',
        formulaSex: 'Used by the body formulas. If left empty, levels by body weight are not computed.',
      }}
      send={async (profile) => {
        await client.clinician.people.saveProfile.mutate({ patientId: patient.id, profile });
        router.refresh();
      }}
    />
  );
};
