'use client';
/** The quiet control of one entry; its form comes when it is asked for. */
import { useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { CorrectForm, type CorrectFormProps } from './correct-form.tsx';

type Act = CorrectFormProps['act'];

const otherWay = {
  replace: { act: 'strike-out', label: 'Strike it out instead' },
  'strike-out': { act: 'replace', label: 'Replace it instead' },
} as const satisfies Record<Act, { readonly act: Act; readonly label: string }>;

export const CorrectEntry = (props: Omit<CorrectFormProps, 'act'> & { readonly words: string }) => {
  const [act, setAct] = useState<Act | null>(null);
  const { words, ...entry } = props;
  if (act === null)
    return (
      <Button tone="quiet" aria-label={`Entered in error: ${words}`} onClick={() => setAct('replace')}>
        Entered in error
      </Button>
    );
  const other = otherWay[act];
  return (
    <div className="stack-close">
      <CorrectForm key={act} {...entry} act={act} />
      <div className="row">
        <Button tone="quiet" onClick={() => setAct(other.act)}>
          {other.label}
        </Button>
        <Button tone="quiet" onClick={() => setAct(null)}>
          Leave it as it is
        </Button>
      </div>
    </div>
  );
};
