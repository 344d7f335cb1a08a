'use client';
/** Writing to the patient in plain words, from a ready sentence or without; it stands on their page. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { Field } from '#core/calculations/describe.ts';
import { readySentences } from '#ui/language/ready.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

const fields: readonly Field[] = [
  { name: 'text', kind: 'text', minLength: 1, maxLength: 2000, about: 'Message' },
];

const languages = { en: 'in English', de: 'in German' } as const;

const sentenceOf = (value: string): string => {
  const [key, language] = value.split(' ');
  const ready = readySentences.find((one) => one.key === key);
  return ready?.[language as keyof typeof languages] ?? '';
};

export const MessageForm = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  const [begun, setBegun] = useState({ text: '', times: 0 });
  return (
    <div className="stack">
      <div className="field">
        <label className="field-label" htmlFor="ready-sentence">
          Start from a prepared sentence
        </label>
        <select
          id="ready-sentence"
          className="input"
          value=""
          onChange={(event) => setBegun({ text: sentenceOf(event.target.value), times: begun.times + 1 })}
        >
          <option value="">choose, or write your own</option>
          {Object.entries(languages).map(([language, words]) => (
            <optgroup key={language} label={words}>
              {readySentences.map(({ key, about }) => (
                <option key={key} value={`${key} ${language}`}>
                  {about}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
        <p className="soft">These sentences have not been reviewed. Read and edit them before you send.</p>
      </div>
      <FormFrame
        key={begun.times}
        prefix="message-"
        fields={fields}
        start={{ text: begun.text }}
        clearsTo={{}}
        label="Send to the patient"
        busyLabel="Sending…"
        taken="Sent."
        hints={{ text: 'Short sentences, no clinic words. Not for emergencies: ring instead.' }}
        send={async ({ text }) => {
          await client.staff.review.write.mutate({ patientId, text: String(text ?? '') });
          router.refresh();
        }}
      />
    </div>
  );
};
