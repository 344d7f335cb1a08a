'use client';
/** One question a page, yes, no or "I don't know", nothing preselected; more only where it may be so. */
import { joints } from '#core/exercises/joints.ts';
import { Button } from '#ui/design-system/button.tsx';
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import './words.ts';
import { RingText } from '#ui/language/ring-text.tsx';
import { t, translate } from '#ui/language/words.ts';
import type { QuestionsAnswer } from './answers.ts';
import { asksMore, type Given, isUnsaid, type Question } from './visit-answers.ts';

export interface VisitQuestionProps {
  readonly question: Question;
  readonly given: Given;
  readonly clinic: QuestionsAnswer['clinic'];
  readonly limbs: QuestionsAnswer['limbs'];
  readonly number: number;
  readonly all: number;
  readonly onGive: (given: Given) => void;
  readonly onNext: () => void;
  readonly onBack: (() => void) | null;
}

const More = ({ question, given, limbs, onGive }: VisitQuestionProps) => (
  <div className="stack">
    {question.asks.details.length > 0 ? (
      <CheckboxGroup<string>
        name={`${question.id}-which`}
        legend={t('visit.which')}
        hint={t('visit.which-hint')}
        options={question.asks.details.map(({ id, label }) => ({ value: id, label: translate(label) }))}
        chosen={given.details}
        onChoose={(details) => onGive({ ...given, details })}
      />
    ) : null}
    {question.asks.limbs ? (
      <CheckboxGroup<string>
        name={`${question.id}-limbs`}
        legend={t('visit.limbs')}
        hint={t('visit.which-hint')}
        options={limbs.map(({ id, name }) => ({ value: id, label: translate(name) }))}
        chosen={given.limbs}
        onChoose={(chosen) => onGive({ ...given, limbs: chosen })}
      />
    ) : null}
    {question.asks.joints ? (
      <CheckboxGroup<string>
        name={`${question.id}-joints`}
        legend={t('visit.joints')}
        hint={t('visit.which-hint')}
        options={joints.map((value) => ({ value, label: t('joint.name', { joint: value }) }))}
        chosen={given.joints}
        onChoose={(chosen) => onGive({ ...given, joints: chosen })}
      />
    ) : null}
    {question.asks.day ? (
      <TextField
        name={`${question.id}-day`}
        type="date"
        label={t('visit.day')}
        hint={t('visit.day-hint')}
        value={given.day}
        onChange={(event) => onGive({ ...given, day: event.target.value })}
      />
    ) : null}
    <div role="status">
      {isUnsaid(question, given) ? <p className="soft">{t('visit.not-said')}</p> : null}
    </div>
  </div>
);

/** Answers that are not left for the visit, by how soon somebody has to be told; a choice of this project. */
const urgent: Readonly<Record<string, 'now' | 'today'>> = {
  'new-chest-faint-or-breath': 'now',
  'swollen-calf': 'today',
  'hot-joint': 'today',
};

const Urgent = ({ question, given, clinic }: VisitQuestionProps) => {
  const isRestAngina = given.answer === 'yes' && given.details.includes('unstable-angina');
  const isTold = given.answer === 'yes' || given.answer === 'not-known';
  const how = isRestAngina ? 'now' : isTold ? urgent[question.id] : undefined;
  if (!how) return null;
  return (
    <Notice tone="danger" isAnnounced title={t(how === 'now' ? 'visit.now-title' : 'visit.today-title')}>
      <p>
        <RingText
          text={
            how === 'now'
              ? t('visit.now', { number: clinic.emergencyNumber })
              : t('visit.today', { phone: clinic.phone })
          }
          clinic={clinic}
        />
      </p>
      {how === 'today' ? (
        <p>
          <RingText
            text={t('hours.nobody-answers', { clinic: clinic.name, urgent: clinic.urgentNumber })}
            clinic={clinic}
          />
        </p>
      ) : null}
    </Notice>
  );
};

const Note = ({ question, given, onGive }: VisitQuestionProps) => (
  <TextField
    name={`${question.id}-note`}
    label={t('visit.add')}
    hint={t('visit.add-hint')}
    maxLength={200}
    value={given.note}
    onChange={(event) => onGive({ ...given, note: event.target.value })}
  />
);

export const VisitQuestion = (props: VisitQuestionProps) => {
  const { question, given, onGive } = props;
  return (
    <ScriptedForm
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        props.onNext();
      }}
    >
      <p className="soft">{t('visit.count', { number: props.number, all: props.all })}</p>
      <RadioGroup
        name={question.id}
        legend={translate(question.question)}
        legendIsHeading
        options={[
          { value: 'yes', label: t('ask.yes') },
          { value: 'no', label: t('ask.no') },
          ...(question.asks.notApplicable
            ? [{ value: 'not-applicable' as const, label: t('visit.does-not-apply') }]
            : []),
          { value: 'not-known', label: t('ask.unknown'), isApart: true },
        ]}
        chosen={given.answer}
        onChoose={(answer) => onGive({ ...given, answer })}
      />
      <Urgent {...props} />
      {asksMore(question, given) ? <More {...props} /> : null}
      {given.answer === null ? null : <Note {...props} />}
      <div className="actions">
        <SendButton isLarge isWide>
          {given.answer === null ? t('ask.skip') : t('ask.continue')}
        </SendButton>
        {props.onBack ? (
          <div className="actions-quiet">
            <Button tone="quiet" onClick={props.onBack}>
              {t('ask.back')}
            </Button>
          </div>
        ) : null}
      </div>
    </ScriptedForm>
  );
};
