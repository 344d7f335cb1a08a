import type { Metadata } from 'next';
import { requirePerson, serverCaller } from '#server/caller.ts';
import { VisitFrame } from '#ui/care/patient/visit-frame.tsx';
import { WriteForm } from '#ui/care/patient/write-form.tsx';

export const metadata: Metadata = { title: 'Write to your clinic' };

const Write = async () => {
  await requirePerson('patient');
  return (
    <VisitFrame current="/write">
      <WriteForm mine={await (await serverCaller()).patient.messages.get()} />
    </VisitFrame>
  );
};

export default Write;
