'use client';
/** Writes the clinic's own words of one consent, as a new version. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import type { ConsentKind } from '#core/episode/consent.ts';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';
import { LongTextField } from '#ui/design-system/text-field.tsx';
import { Asked } from '../account/asked.tsx';
import { change } from '../account/call.ts';
import { useAsking } from '../account/use-asking.ts';

/** As the procedure takes it. */
const shortest = 20;
const longest = 4000;

export interface WordingFormProps {
  readonly kind: ConsentKind;
  readonly text: string;
}

export const WordingForm = ({ kind, text: before }: WordingFormProps) => {
  const router = useRouter();
  const field = `wording-${kind}`;
  const asking = useAsking(field);
  const [text, setText] = useState(before);
  const save = (event: FormEvent) => {
    event.preventDefault();
    const length = text.trim().length;
    if (length < shortest || length > longest)
      return asking.t([
        { field, text: say('wording.length', { least: shortest, most: longest, count: length }) },
      ]);
    void asking.ask(
      () => change('admin.care.writeWording', { kind, text }),
      () => router.refresh(),
    );
  };
  return (
    <form method="post" className="stack" noValidate onSubmit={save}>
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
    </form>
  );
};
