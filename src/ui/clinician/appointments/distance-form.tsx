'use client';
/** What was found of one joint, each part with how it was judged. */
import { useRouter } from 'next/navigation';
import { SentFrame } from '#ui/clinician/forms/form-frame.tsx';
import { recordDistance } from '#ui/clinician/forms/sent/distance.ts';
import type { Typed } from '#ui/clinician/forms/typed.ts';

interface DistanceFormProps {
  readonly about: Readonly<Record<string, string>>;
  readonly start: Typed;
  readonly label: string;
  readonly hints: Readonly<Record<string, string>>;
}

export const DistanceForm = ({ about, start, label, hints }: DistanceFormProps) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={recordDistance}
      about={about}
      start={start}
      label={label}
      hints={hints}
      tone="plain"
      onTaken={router.refresh}
    />
  );
};
