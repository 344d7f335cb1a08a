'use client';
/** Writes the clinic's own words of one consent, as a new version. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import type { ConsentKind } from '#core/episode/consent.ts';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { LongTextField } from '#ui/design-system/text-field.tsx';
import { Asked } from '../account/asked.tsx';
import { change } from '../account/call.ts';
import { useAsking } from '../account/use-asking.ts';
import { writeWording } from './admin-forms.ts';

export interface WordingFormProps {
  readonly kind: ConsentKind;
  readonly text: string;
}

export const WordingForm = ({ kind, text: before }: WordingFormProps) => {
  const router = useRouter();
  const field = `wording-${kind}`;
  const posted = usePosted(writeWording.name, { kind });
  const asking = useAsking(field, posted);
  const [text, setText] = useState(posted?.typed[field] ?? before);
  const save = (event: FormEvent) => {
    event.preventDefault();
    const typed = { [field]: text };
    const missing = writeWording.missing(typed, { kind });
    if (missing.length > 0) return asking.t(missing);
    void asking.ask(
      () => change(writeWording.path, writeWording.input(typed, { kind })),
      () => router.refresh(),
    );
  };
  return (
    <PostedForm form={writeWording.name} about={{ kind }} className="stack" onSubmit={save}>
      <Asked asking={asking} />
      <LongTextField
        name={field}
        label={say('wording.label')}
        rows={8}
        value={text}
        error={asking.errorOf(field)}
        onChange={(event) => setText(event.target.value)}
      />
      <Button type="submit" disabled={asking.isBusy}>
        {say('wording.save')}
      </Button>
    </PostedForm>
  );
};
