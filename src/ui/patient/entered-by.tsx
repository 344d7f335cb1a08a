'use client';
/** A carer types with the patient's leave: said before the first answer, and kept with each entry. */
import { useState } from 'react';
import { type Carer, carers } from '#core/record/entry-words.ts';
import { Button } from '#ui/design-system/button.tsx';
import { CheckField } from '#ui/design-system/checkbox-group.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ErrorMessage } from '#ui/design-system/error-message.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { t } from '#ui/language/words.ts';

export interface EnteredByProps {
  readonly who: Carer | null;
  readonly onChoose: (who: Carer | null) => void;
}

const Form = ({ onChoose }: Pick<EnteredByProps, 'onChoose'>) => {
  const [who, setWho] = useState<Carer | null>(null);
  const [mayDo, setMayDo] = useState(false);
  const [isAsked, setAsked] = useState(false);
  const problem = !isAsked
    ? null
    : who === null
      ? { field: 'entered-as', text: t('ask.choose-must') }
      : mayDo
        ? null
        : { field: 'entered-leave', text: t('entered.leave-missing') };
  return (
    <div className="stack-close">
      <ErrorSummary problems={problem ? [problem] : []} />
      <p>{t('entered.about')}</p>
      <RadioGroup<Carer>
        name="entered-as"
        legend={t('entered.who')}
        error={problem?.field === 'entered-as' ? problem.text : undefined}
        options={carers.map((value) => ({ value, label: t(`entered.${value}`) }))}
        chosen={who}
        onChoose={setWho}
      />
      {problem?.field === 'entered-leave' ? (
        <ErrorMessage id="entered-leave-error">{problem.text}</ErrorMessage>
      ) : null}
      <CheckField name="entered-leave" label={t('entered.leave')} isChecked={mayDo} onSwitch={setMayDo} />
      <Button tone="plain" onClick={() => (who !== null && mayDo ? onChoose(who) : setAsked(true))}>
        {t('entered.go')}
      </Button>
    </div>
  );
};

export const EnteredBy = ({ who, onChoose }: EnteredByProps) =>
  who === null ? (
    <Disclosure summary={t('entered.title')}>
      <Form onChoose={onChoose} />
    </Disclosure>
  ) : (
    <Notice title={t('entered.now', { who: t(`entered.${who}`) })}>
      <Button tone="quiet" onClick={() => onChoose(null)}>
        {t('entered.stop')}
      </Button>
    </Notice>
  );
