'use client';
/** Check your answers: each with Change, then one button to send. */
import { Button } from '#ui/design-system/button.tsx';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { t } from '#ui/language/words.ts';
import type { CheckRow } from '../session/check-rows.ts';

export interface CheckListProps {
  readonly rows: readonly CheckRow[];
  readonly onChange: (step: string) => void;
  readonly onSend: () => void;
}

export const CheckList = ({ rows, onChange, onSend }: CheckListProps) => (
  <div className="stack">
    <PageHeading>{t('check.title')}</PageHeading>
    <p>{t('check.note')}</p>
    <DefinitionList
      rows={rows.map(({ step, name, value }) => ({
        key: step,
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
    <Button isLarge isWide onClick={onSend}>
      {t('check.send')}
    </Button>
  </div>
);
