'use client';
/** The forms of a letter: to whom, its summary, the signature, and marking it void. */
import { useRouter } from 'next/navigation';
import type { Addressee, OwnSentences, SummaryPart } from '#core/episode/letters/letter.ts';
import { summaryParts } from '#core/episode/letters/letter.ts';
import { say } from '#messages/en/staff/papers/letters.ts';
import { languages } from '#messages/languages.ts';
import { languageName } from '../documents/paper-link.tsx';
import { SentFrame } from '../forms/form-frame.tsx';
import { beginLetter, changeLetter, signLetter, voidLetter, writeSummary } from '../forms/sent/letters.ts';
import type { Typed } from '../forms/typed.ts';

const choices = { language: languages.map(({ tag }) => ({ value: tag, label: languageName(tag) })) };

const typedFrom = ({ name, role, organisation, address }: Addressee): Typed => ({
  name,
  role: role ?? '',
  organisation: organisation ?? '',
  address: address ?? '',
});

interface BeginProps {
  readonly patientId: string;
  /** Several ids in one text. */
  readonly notes: string;
  readonly addressee: Addressee | null;
}

export const BeginLetter = ({ patientId, notes, addressee }: BeginProps) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={beginLetter}
      about={{ patientId, notes }}
      choices={choices}
      start={addressee ? typedFrom(addressee) : {}}
      label={say('begin')}
      onTaken={(answer) =>
        router.push(`/patients/${patientId}/care/letters/${(answer as { letterId: string }).letterId}`)
      }
    />
  );
};

export interface OfLetter {
  readonly patientId: string;
  readonly letterId: string;
  /** The version that is shown, as text. */
  readonly seen: string;
}

interface ChangeProps {
  readonly about: OfLetter;
  readonly addressee: Addressee;
  readonly copies: string;
  readonly toPatient: boolean;
  readonly language: string;
}

export const ChangeLetter = ({ about, addressee, copies, toPatient, language }: ChangeProps) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={changeLetter}
      about={{ ...about }}
      choices={choices}
      start={{ ...typedFrom(addressee), copies, toPatient: toPatient ? 'yes' : 'no', language }}
      label={say('save-to')}
      onTaken={() => router.refresh()}
    />
  );
};

interface SummaryProps {
  readonly about: OfLetter;
  readonly made: Readonly<Record<SummaryPart, string>>;
  readonly own: OwnSentences;
}

/** Under a sentence of one's own: what the record said then, and what it says now. */
const hintOf = (made: string, own: OwnSentences[SummaryPart]): string => {
  const now = made === '' ? say('nothing-made') : say('made-now', { now: made });
  return own ? `${say('own-by', { name: own.by, instead: own.instead })} ${now}` : made === '' ? now : '';
};

export const SummaryForm = ({ about, made, own }: SummaryProps) => {
  const router = useRouter();
  const start = Object.fromEntries(summaryParts.map((part) => [part, own[part]?.text ?? made[part]]));
  return (
    <SentFrame
      sent={writeSummary}
      about={{ ...about }}
      start={start}
      hints={Object.fromEntries(summaryParts.map((part) => [part, hintOf(made[part], own[part])]))}
      label={say('save-sentences')}
      onTaken={() => router.refresh()}
    />
  );
};

interface SignProps {
  readonly about: OfLetter & { readonly digest: string };
  readonly signer: string;
  readonly role: string;
  readonly registration: string;
}

export const SignLetter = ({ about, signer, role, registration }: SignProps) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={signLetter}
      about={{ ...about }}
      start={{ role, registration }}
      label={say('sign-as', { name: signer })}
      confirm={{ yes: say('sign-anyway'), no: say('sign-not') }}
      onTaken={() => router.refresh()}
    />
  );
};

export const VoidLetter = ({ patientId, letterId }: Omit<OfLetter, 'seen'>) => {
  const router = useRouter();
  return (
    <SentFrame
      sent={voidLetter}
      about={{ patientId, letterId }}
      label={say('make-void')}
      onTaken={() => router.refresh()}
    />
  );
};
