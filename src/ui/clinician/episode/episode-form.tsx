'use client';
/** Opening an episode of care. Contacts are typed a line each: who they are; name; telephone. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/episode.ts';
import { SentFrame } from '#ui/clinician/forms/form-frame.tsx';
import { openEpisode } from '#ui/clinician/forms/sent/care.ts';

export const EpisodeForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={openEpisode}
      about={{ patientId }}
      label={say('open-this-episode-of-care')}
      clearsTo={{}}
      hints={{
        diagnoses: say('one-per-line'),
        goals: say('goals-one-per-line'),
        followedJoints: say('one-or-two-joints'),
        contacts: say('contacts-one-per-line'),
      }}
      onTaken={router.refresh}
    />
  );
};
