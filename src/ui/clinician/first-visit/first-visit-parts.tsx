'use client';
import type { AskedItem } from '#api/clinician/question-in-english.ts';
/** The parts of the first-visit page, each with what is on record beside it. */
import { joints } from '#core/exercises/joints.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { optionInWords } from '#ui/clinician/forms/field-words.ts';
import { answerInWords, type ItemState } from '#ui/clinician/screening/screening-form-state.ts';
import { ScreeningItemField } from '#ui/clinician/screening/screening-item-field.tsx';
import { boundField } from '#ui/design-system/bound-field.ts';
import { Button } from '#ui/design-system/button.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import type { FirstVisitPage } from '../episode/answers.ts';
import { stateOf, type Typed } from './first-visit-state.ts';

export interface PartProps {
  readonly page: FirstVisitPage;
  readonly typed: Typed;
  readonly onType: (name: string, text: string) => void;
  readonly errorOf: (name: string) => string | undefined;
}

export const Who = (props: PartProps) => (
  <div className="fields">
    <TextField {...boundField(props, 'profile.diagnosis')} label="Diagnosis" />
    <RadioGroup
      name="profile.inflammatoryArthritis"
      legend={say('inflammatory-arthritis')}
      isWrapped
      error={props.errorOf('profile.inflammatoryArthritis')}
      options={[
        { value: 'yes', label: 'Yes' },
        { value: 'no', label: 'No' },
      ]}
      chosen={props.typed['profile.inflammatoryArthritis'] as 'yes' | 'no' | undefined}
      onChoose={(value) => props.onType('profile.inflammatoryArthritis', value)}
    />
    <SelectField
      {...boundField(props, 'profile.followedJoints')}
      label={say('joint-to-follow-every-day')}
      options={joints.map((value) => ({ value, label: optionInWords(value) }))}
    />
    <TextField
      {...boundField(props, 'profile.ownedLoadsKg')}
      label={say('loads-at-home-kg')}
      hint={say('loads-separated')}
      inputMode="decimal"
    />
    <TextField {...boundField(props, 'goal')} label={say('goal')} isOptional maxLength={300} />
  </div>
);

export interface QuestionsProps {
  readonly page: FirstVisitPage;
  readonly items: readonly AskedItem[];
  readonly typed: Typed;
  readonly onItem: (id: string, state: ItemState) => void;
  readonly onRest: () => void;
  readonly onHome: () => void;
}

export const Questions = ({ page, items, typed, onItem, onRest, onHome }: QuestionsProps) => {
  const before = page.screening;
  const open = items.filter((item) => stateOf(typed, item.id).answer === null).length;
  return (
    <div className="stack-close">
      <p className="soft">{say('needed-for-low-load', { count: items.length })}</p>
      {page.preVisit ? (
        <Button tone="plain" onClick={onHome}>
          {say('use-the-patients-answers', { on: dayInWords(page.preVisit.day) })}
        </Button>
      ) : null}
      {items.map((item) => (
        <ScreeningItemField
          key={item.id}
          item={item}
          state={stateOf(typed, item.id)}
          previous={
            before
              ? answerInWords(
                  item,
                  before.answers.find((answer) => answer.item === item.id),
                )
              : null
          }
          onChange={onItem}
        />
      ))}
      <div className="visit-rest row">
        <Button tone="plain" onClick={onRest} disabled={open === 0}>
          {say('all-others-no')}
        </Button>
        <span role="status">
          {open === 0 ? say('every-question-is-answered') : say('still-open', { open, count: items.length })}
        </span>
      </div>
    </div>
  );
};
