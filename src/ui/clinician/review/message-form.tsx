'use client';
/** Writing to the patient in plain words, from a ready sentence or without; it stands on their page. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { Field } from '#core/calculations/describe.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import type { ReadyKey } from '#messages/ready.ts';
import type { Text } from '#messages/text.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

const fields: readonly Field[] = [
  { name: 'text', kind: 'text', minLength: 1, maxLength: 2000, about: 'Message' },
];

/** What a ready sentence is for, as the clinician chooses it. */
const about: Readonly<Record<ReadyKey, string>> = {
  stay: 'Stay with the same dose',
  less: 'Do a little less',
  harder: 'A harder version comes next',
  'stop-ring': 'Stop and ring',
  answers: 'Mornings without answers',
  'pause-over': 'The pause is over',
  review: 'About the next visit',
  measure: 'Something is to be measured again',
};

/** "German". */
const languageName = (tag: LanguageTag): string =>
  new Intl.DisplayNames('en', { type: 'language' }).of(tag) ?? tag;

export interface MessageFormProps {
  readonly patientId: string;
  readonly ready: readonly { readonly key: ReadyKey; readonly text: Text }[];
}

export const MessageForm = ({ patientId, ready }: MessageFormProps) => {
  const sentenceOf = (value: string): string => {
    const [key, tag] = value.split(' ');
    return ready.find((one) => one.key === key)?.text[tag as LanguageTag] ?? '';
  };
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
          {languages.map(({ tag }) => (
            <optgroup key={tag} label={`in ${languageName(tag)}`}>
              {ready.map(({ key }) => (
                <option key={key} value={`${key} ${tag}`}>
                  {about[key]}
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
          await client.clinician.review.write.mutate({ patientId, text: String(text ?? '') });
          router.refresh();
        }}
      />
    </div>
  );
};
