'use client';
/** The questionnaires the clinic wrote: each as it is asked now, the way to its next version, and retiring it. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { OwnQuestion, Questionnaire } from '#core/assessment/questionnaires/questionnaire.ts';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { Asked } from '../account/asked.tsx';
import { change } from '../account/call.ts';
import { useAsking } from '../account/use-asking.ts';
import { QuestionnaireForm } from './questionnaire-form.tsx';

export interface OwnQuestionnaire extends Questionnaire {
  readonly questionnaireId: string;
  readonly version: number;
  readonly byName: string;
  readonly retired: { readonly by: string } | null;
}

const answeredBy = ({ kind, low, high }: OwnQuestion): string =>
  kind === 'score'
    ? say('questionnaire.ends', { low: low ?? '', high: high ?? '' })
    : say(`questionnaire.kind-${kind}`);

const Retire = ({ questionnaireId, title }: OwnQuestionnaire) => {
  const router = useRouter();
  const id = `retire-${questionnaireId}`;
  const asking = useAsking(id);
  const [isSure, setSure] = useState(false);
  const retire = () =>
    void asking.ask(
      () => change('admin.questionnaires.retire', { questionnaireId }),
      () => router.refresh(),
    );
  return (
    <>
      <Asked asking={asking} />
      {isSure ? (
        <ConfirmQuestion
          question={say('questionnaire.retire-question', { title })}
          yes={say('questionnaire.retire')}
          no={say('questionnaire.leave')}
          onYes={retire}
          onNo={() => setSure(false)}
        />
      ) : (
        <Button id={id} tone="quiet" onClick={() => setSure(true)}>
          {say('questionnaire.retire')}
          <span className="visually-hidden">: {title}</span>
        </Button>
      )}
    </>
  );
};

interface OneProps {
  readonly one: OwnQuestionnaire;
  readonly isOpen: boolean;
  readonly onOpen: (isOpen: boolean) => void;
}

const One = ({ one, isOpen, onOpen }: OneProps) => (
  <article className="stack-close">
    <h3>{one.title}</h3>
    <p>
      <StatusTag shape={one.retired ? 'note' : 'done'} tone={one.retired ? 'soft' : 'accent'}>
        {one.retired
          ? say('questionnaire.retired', { version: one.version })
          : say('questionnaire.offered', { version: one.version })}
      </StatusTag>{' '}
      <span className="soft">
        {say(one.retired ? 'questionnaire.retired-by' : 'questionnaire.written-by', {
          name: one.retired?.by ?? one.byName,
        })}
      </span>
    </p>
    <ol>
      {one.questions.map((question) => (
        <li key={question.text}>
          {question.text} <span className="soft">{answeredBy(question)}</span>
        </li>
      ))}
    </ol>
    {one.retired ? null : isOpen ? (
      <QuestionnaireForm before={one} onDone={() => onOpen(false)} />
    ) : (
      <div className="row">
        <Button tone="plain" onClick={() => onOpen(true)}>
          {say('questionnaire.change')}
          <span className="visually-hidden">: {one.title}</span>
        </Button>
        <Retire {...one} />
      </div>
    )}
  </article>
);

/** One form at a time. */
export const Questionnaires = ({
  questionnaires,
}: {
  readonly questionnaires: readonly OwnQuestionnaire[];
}) => {
  const [open, setOpen] = useState<string | null>(null);
  const isNew = open === 'new';
  return (
    <section className="stack" id="questionnaires">
      <h2>{say('questionnaires')}</h2>
      <p className="soft">{say('questionnaires.note')}</p>
      {questionnaires.length === 0 ? <p>{say('questionnaires.none')}</p> : null}
      {questionnaires.map((one) => (
        <One
          key={one.questionnaireId}
          one={one}
          isOpen={open === one.questionnaireId}
          onOpen={(isOpen) => setOpen(isOpen ? one.questionnaireId : null)}
        />
      ))}
      {isNew ? (
        <QuestionnaireForm before={null} onDone={() => setOpen(null)} />
      ) : (
        <Button tone="plain" onClick={() => setOpen('new')}>
          {say('questionnaire.new')}
        </Button>
      )}
    </section>
  );
};
