'use client';
/** Advice that stands in no record: a clinician says it was read, then prints. Nothing of it is kept. */
import { useState } from 'react';
import { say } from '#messages/en/staff/documents.ts';
import { Button } from '#ui/design-system/button.tsx';
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { Notice } from '#ui/design-system/notice.tsx';

export interface ReadFirstProps {
  readonly advice: readonly string[];
  /** Language of the advice. */
  readonly language: string;
  /** Address of the same as a file; offered once the advice was read. */
  readonly pdf: string;
}

const options = [{ value: 'read', label: say('read-and-fits') }] as const;

export const ReadFirst = ({ advice, language, pdf }: ReadFirstProps) => {
  const [chosen, setChosen] = useState<readonly 'read'[]>([]);
  const isOpen = advice.length === 0 || chosen.length > 0;
  return (
    <div className="screen-only stack-close">
      {advice.length > 0 ? (
        <Notice tone="care" title={say('advice-in-the-clinics-name')}>
          <ul lang={language}>
            {advice.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <CheckboxGroup
            name="advice-read"
            legend={say('before-you-hand-it-over')}
            options={options}
            chosen={chosen}
            onChoose={setChosen}
          />
        </Notice>
      ) : null}
      <div className="row">
        <Button
          tone="plain"
          aria-disabled={isOpen ? undefined : true}
          onClick={() => isOpen && window.print()}
        >
          Print
        </Button>
        {isOpen ? (
          <a href={pdf} target="_blank" rel="noreferrer">
            {say('this-as-pdf')}
          </a>
        ) : null}
        <span role="status" className="soft">
          {isOpen ? say('read-all-of-it-before-you') : say('tick-first')}
        </span>
      </div>
    </div>
  );
};
