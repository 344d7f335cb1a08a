'use client';
/** The quiet control of one entry; its form comes when it is asked for. */
import { useState } from 'react';
import { isStruckOutOnly } from '#core/corrections/correction.ts';
import { say } from '#messages/en/staff/corrections.ts';
import { Button } from '#ui/design-system/button.tsx';
import { CorrectForm, type CorrectFormProps } from './correct-form.tsx';

type Act = CorrectFormProps['act'];

const otherWay = {
  replace: { act: 'strike-out', label: say('strike-it-out-instead') },
  'strike-out': { act: 'replace', label: say('replace-it-instead') },
} as const satisfies Record<Act, { readonly act: Act; readonly label: string }>;

export const CorrectEntry = (props: Omit<CorrectFormProps, 'act'> & { readonly words: string }) => {
  const [act, setAct] = useState<Act | null>(null);
  const { words, ...entry } = props;
  if (act === null)
    return (
      <Button
        tone="quiet"
        aria-label={say('entered-in-error-of', { words })}
        onClick={() => setAct(isStruckOutOnly(props.subject) ? 'strike-out' : 'replace')}
      >
        {say('entered-in-error')}
      </Button>
    );
  const other = otherWay[act];
  return (
    <div className="stack-close">
      <CorrectForm {...entry} act={act} />
      <div className="row">
        {isStruckOutOnly(props.subject) ? null : (
          <Button tone="quiet" onClick={() => setAct(other.act)}>
            {other.label}
          </Button>
        )}
        <Button tone="quiet" onClick={() => setAct(null)}>
          {say('leave')}
        </Button>
      </div>
    </div>
  );
};
