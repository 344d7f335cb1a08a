'use client';
/** What is known of a patient for dosing. Saving makes a new version; the earlier ones are kept. */
import { useRouter } from 'next/navigation';
import { equipmentKinds } from '#core/exercises/equipment.ts';
import { careProfileFields } from '#core/record/staff-fields.ts';
import { say } from '#messages/en/staff/record.ts';
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
      label={say('profile.save')}
      taken={say('profile.taken')}
      hints={{
        followedJoints: say('profile.joints-hint'),
        swellingNotAsked: say('profile.swelling-hint'),
        ownedLoadsKg: say('profile.loads-hint'),
        formulaSex: say('profile.sex-hint'),
      }}
      send={async (profile) => {
        await client.clinician.people.saveProfile.mutate({ patientId: patient.id, profile });
        router.refresh();
      }}
    />
  );
};
