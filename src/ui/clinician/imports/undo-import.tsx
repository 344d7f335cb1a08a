'use client';
/** Takes a whole import back, with the reason. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/exchange/imports.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { undoImport } from '../forms/sent/imports.ts';

export const UndoImport = (about: { readonly patientId: string; readonly importId: string }) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={undoImport}
      about={{ ...about }}
      label={say('take-back')}
      tone="plain"
      clearsTo={{}}
      onTaken={router.refresh}
    />
  );
};
