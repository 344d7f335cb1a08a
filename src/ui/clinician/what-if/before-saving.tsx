'use client';
/** Beside values of a joint that are being set: what they would have changed in the last twelve weeks. Saves nothing. */
import { type MouseEvent, useState } from 'react';
import type { Joint } from '#core/exercises/joints.ts';
import { say } from '#messages/en/staff/review/what-if.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorMessage } from '#ui/design-system/error-message.tsx';
import { type WhatIfShown, WhatIfView } from '#ui/design-system/what-if/what-if-view.tsx';
import { client } from '../client.ts';
import { movedBy } from './asked.ts';

interface BeforeSavingProps {
  readonly patientId: string;
  readonly joint: Joint;
}

/** As they stand in the form around the button; a top is told by how far it lies over usual pain. */
const movedIn = (form: HTMLFormElement, joint: Joint) => {
  // The names of a form's fields begin with its own.
  const entries = [...new FormData(form)];
  const typed = (field: string) =>
    String(entries.find(([name]) => name.endsWith(field))?.[1] ?? '').trim() || undefined;
  const [usual, top] = [typed('usualPain'), typed('usualPainTop')];
  const band = usual && top ? String(Number(top) - Number(usual)) : undefined;
  return movedBy({ joint, limit: typed('acceptablePainLimit'), usual, band });
};

type Answer = { readonly found: WhatIfShown } | { readonly refused: string } | null;

export const BeforeSaving = ({ patientId, joint }: BeforeSavingProps) => {
  const [answer, setAnswer] = useState<Answer>(null);
  const press = async (event: MouseEvent<HTMLButtonElement>) => {
    const { form } = event.currentTarget;
    const moved = form && movedIn(form, joint);
    if (!moved) return setAnswer({ refused: say('not-read') });
    try {
      setAnswer({ found: await client.clinician.replay.ofPatient.query({ patientId, moved }) });
    } catch (error) {
      setAnswer({ refused: (error as Error).message });
    }
  };
  return (
    <div className="stack-close">
      <div className="row">
        <Button tone="plain" onClick={(event) => void press(event)}>
          {say('before-saving')}
        </Button>
        <a href={`/patients/${patientId}/review/what-if?joint=${joint}`}>{say('title')}</a>
      </div>
      <div aria-live="polite">
        {answer && 'found' in answer ? <WhatIfView found={answer.found} /> : null}
        {answer && 'refused' in answer ? (
          <ErrorMessage id="what-if-refused">{answer.refused}</ErrorMessage>
        ) : null}
      </div>
    </div>
  );
};
