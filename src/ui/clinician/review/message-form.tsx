'use client';
/** Writing to the patient in plain words, from a ready sentence or without; it stands on their page. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { say } from '#messages/en/staff/review.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import type { ReadyKey } from '#messages/ready.ts';
import type { Text } from '#messages/text.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { writeMessage } from '../forms/sent/review.ts';

/** What a ready sentence is for, as the clinician chooses it. */
const about: Readonly<Record<ReadyKey, string>> = {
  stay: say('ready.stay'),
  less: say('ready.less'),
  harder: say('ready.harder'),
  'stop-ring': say('ready.stop-ring'),
  answers: say('ready.answers'),
  'pause-over': say('ready.pause-over'),
  review: say('ready.review'),
  measure: say('ready.measure'),
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
          {say('ready.start')}
        </label>
        <select
          id="ready-sentence"
          className="input"
          value=""
          onChange={(event) => setBegun({ text: sentenceOf(event.target.value), times: begun.times + 1 })}
        >
          <option value="">{say('ready.choose')}</option>
          {languages.map(({ tag }) => (
            <optgroup key={tag} label={say('ready.in', { language: languageName(tag) })}>
              {ready.map(({ key }) => (
                <option key={key} value={`${key} ${tag}`}>
                  {about[key]}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
        <p className="soft">{say('ready.note')}</p>
      </div>
      <SentFrame
        key={begun.times}
        sent={writeMessage}
        about={{ patientId }}
        isAnew={begun.times > 0}
        start={{ text: begun.text }}
        clearsTo={{}}
        label={say('message.send')}
        busyLabel="Sending…"
        hints={{ text: say('message.hint') }}
        onTaken={router.refresh}
      />
    </div>
  );
};
