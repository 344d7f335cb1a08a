'use client';
/** Check your answers: each with Change, then one button to send. */
import { Button } from '#ui/design-system/button.tsx';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { t } from '#ui/language/words.ts';
import type { CheckRow } from '../session/check-rows.ts';

export interface AnswerRowsProps {
  readonly rows: readonly CheckRow[];
  readonly onChange: (step: string) => void;
}

/** Every answer in a line, each with its Change. */
export const AnswerRows = ({ rows, onChange }: AnswerRowsProps) => (
  <div data-echo>
    <DefinitionList
      rows={rows.map(({ step, key = step, name, value }) => ({
        key,
        name,
        value,
        action: (
          <Button tone="quiet" onClick={() => onChange(step)}>
            {t('ask.change')}
            <span className="visually-hidden"> {name}</span>
          </Button>
        ),
      }))}
    />
  </div>
);

export interface CheckListProps extends AnswerRowsProps {
  readonly onSend: () => void;
}

export const CheckList = ({ rows, onChange, onSend }: CheckListProps) => (
  <div className="stack">
    <PageHeading>{t('check.title')}</PageHeading>
    <Button isLarge isWide onClick={onSend}>
      {t('check.send')}
    </Button>
    <AnswerRows rows={rows} onChange={onChange} />
  </div>
);
