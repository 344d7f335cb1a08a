'use client';
/** The questions that every exercise needs, each answered by itself; what an answer closes is said beside them at once. */
import { useMemo } from 'react';
import { eligibilityWith } from '#core/episode/eligibility-now.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { screeningSheetVersion } from '#core/screening/items.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { answerInWords } from '#ui/clinician/screening/screening-form-state.ts';
import { ScreeningItemField } from '#ui/clinician/screening/screening-item-field.tsx';
import { Button } from '#ui/design-system/button.tsx';
import { answered, beside, restNo, stateOf, unansweredItems, withItem } from './first-visit-state.ts';
import { Means, meansInOneSentence } from './means.tsx';
import { SavedStep, type StepProps, useStep } from './step-frame.tsx';

const useQuestions = (props: StepProps) => {
  const at = useStep(props);
  const { items, basis } = props.page;
  const { setTyped } = at;
  const outcomes = useMemo(
    () => eligibilityWith(basis, { sheetVersion: screeningSheetVersion, answers: answered(at.typed, items) }),
    [basis, items, at.typed],
  );
  const onItem = useMemo(
    () =>
      (id: string, state: Parameters<typeof withItem>[2]): void =>
        setTyped((known) => withItem(known, id, state)),
    [setTyped],
  );
  return { at, outcomes, onItem, open: unansweredItems(at.typed, items) };
};

const Rest = (props: {
  readonly open: number;
  readonly all: number;
  readonly onRest: () => void;
  readonly means: string;
}) => (
  <>
    <Button tone="plain" onClick={props.onRest} disabled={props.open === 0}>
      {say('all-others-no')}
    </Button>
    <span role="status" className="small">
      <strong>{props.means}</strong>{' '}
      {props.open === 0
        ? say('every-question-is-answered')
        : say('still-open', { open: props.open, count: props.all })}
    </span>
  </>
);

export const ScreeningStep = (props: StepProps) => {
  const { at, outcomes, onItem, open } = useQuestions(props);
  const { items, screening, preVisit } = props.page;
  return (
    <div className="visit-step-means">
      <SavedStep
        {...props}
        at={at}
        head={<p className="soft">{say('ask-each-aloud')}</p>}
        more={
          <Rest
            open={open.length}
            all={items.length}
            means={meansInOneSentence(outcomes)}
            onRest={() => at.setTyped((known) => restNo(known, items))}
          />
        }
      >
        {preVisit ? (
          <Button tone="plain" onClick={() => at.setTyped((known) => beside(known, items, preVisit.answers))}>
            {say('use-the-patients-answers', { on: dayInWords(preVisit.day) })}
          </Button>
        ) : null}
        <div className="visit-questions">
          {items.map((item) => {
            const before = screening?.answers.find((answer) => answer.item === item.id);
            return (
              <ScreeningItemField
                key={item.id}
                item={item}
                state={stateOf(at.typed, item.id)}
                previous={before ? answerInWords(item, before) : null}
                onChange={onItem}
              />
            );
          })}
        </div>
        <p className="soft">{say('needed-for-low-load', { count: items.length })}</p>
      </SavedStep>
      <Means outcomes={outcomes} />
    </div>
  );
};
