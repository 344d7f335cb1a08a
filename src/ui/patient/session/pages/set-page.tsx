'use client';
/** One set: do it, count it, say it is done. */
import { useState } from 'react';
import { Button } from '#ui/shared/button.tsx';
import { ConfirmQuestion } from '#ui/shared/confirm-question.tsx';
import { Disclosure } from '#ui/shared/disclosure.tsx';
import { ErrorSummary } from '#ui/shared/error-summary.tsx';
import { PageHeading } from '#ui/shared/page-heading.tsx';
import { say, tell } from '#ui/words.ts';
import { HowTo } from '../../figures/how-to.tsx';
import { Counter } from '../counter.tsx';
import { type LineDraft, setOf, targetOf } from '../draft.ts';
import { isCuffOn } from '../restriction.ts';
import type { PageProps } from './page-props.ts';

const targetText = (line: LineDraft, set: number): string => {
  const { low, high } = targetOf(line.dose, set);
  return low === high ? say('set.target-same', { low }) : say('set.target', { low, high });
};

/** How near to the end of one's strength the set is meant to go. */
const effortText = (line: LineDraft): string | null => {
  if (line.dose.method === 'occlusion') return null;
  const { reserve } = line.dose;
  return reserve === 0 || reserve === 1 ? say(`set.effort-${reserve}`) : say('set.effort', { reserve });
};

/** A count past this is asked about once: a slip of the thumb is likelier than twice the plan. */
const isFarOver = (line: LineDraft, set: number, repetitions: number): boolean =>
  repetitions > Math.max(targetOf(line.dose, set).high * 2, targetOf(line.dose, set).high + 10);

/** In work where the cuff comes down in each rest, it goes up again before the set. */
const needsCuffUp = (line: LineDraft, set: number): boolean =>
  line.dose.method === 'occlusion' &&
  line.dose.inflation === 'intermittent' &&
  set > 1 &&
  setOf(line, set).finishedAt === null &&
  !isCuffOn(line);

const How = ({ line }: { readonly line: LineDraft }) => (
  <Disclosure summary={say('line.how')}>
    <HowTo exerciseId={line.dose.exerciseId} instructions={line.instructions} />
  </Disclosure>
);

const Heading = ({ line, set }: { readonly line: LineDraft; readonly set: number }) => (
  <PageHeading caption={tell(line.title)}>{say('set.caption', { set, of: line.dose.sets })}</PageHeading>
);

const CuffUpPage = ({ draft, line: index, set, send, clock }: PageProps) => (
  <div className="stack">
    <Heading line={draft.lines[index]!} set={set} />
    <Button isLarge isWide onClick={() => send({ type: 'cuff-on', line: index, now: clock() })}>
      {say('cuff.up')}
    </Button>
  </div>
);

const Ways = ({ draft, line: index, set, send, clock }: PageProps) => (
  <div className="actions-quiet">
    <Button
      tone="quiet"
      onClick={() => send({ type: 'set-done', line: index, set, lostCount: true, now: clock() })}
    >
      {say('set.lost')}
    </Button>
    {draft.lines[index]?.dose.method === 'occlusion' ? null : (
      <Button tone="quiet" onClick={() => send({ type: 'set-stopped', line: index, set, now: clock() })}>
        {say('set.stop')}
      </Button>
    )}
  </div>
);

const CountPage = (props: PageProps) => {
  const { draft, line: index, set, send, clock } = props;
  const line = draft.lines[index]!;
  const { repetitions } = setOf(line, set);
  const [problem, setProblem] = useState<string | null>(null);
  const [isAsking, setAsking] = useState(false);
  const finish = () => send({ type: 'set-done', line: index, set, lostCount: false, now: clock() });
  const done = () => {
    if (repetitions === null) setProblem(say('set.count-missing'));
    else if (isFarOver(line, set, repetitions)) setAsking(true);
    else finish();
  };
  const effort = effortText(line);
  return (
    <div className="stack">
      <ErrorSummary problems={problem ? [{ field: 'count', text: problem }] : []} />
      <Heading line={line} set={set} />
      {effort ? <p>{effort}</p> : null}
      <Counter
        repetitions={repetitions}
        startsAt={targetOf(line.dose, set).low}
        label={say('set.count')}
        target={targetText(line, set)}
        error={problem ?? undefined}
        onCount={(count) => {
          setProblem(null);
          setAsking(false);
          send({ type: 'count', line: index, set, repetitions: count });
        }}
      />
      {isAsking && repetitions !== null ? (
        <ConfirmQuestion
          question={say('set.count-sure', { repetitions })}
          yes={say('set.count-sure-yes', { repetitions })}
          no={say('set.count-sure-no')}
          onYes={finish}
          onNo={() => setAsking(false)}
        />
      ) : (
        <Button isLarge isWide onClick={done}>
          {say('set.done')}
        </Button>
      )}
      <Ways {...props} />
      <How line={line} />
    </div>
  );
};

export const SetPage = (props: PageProps) =>
  needsCuffUp(props.draft.lines[props.line]!, props.set) ? (
    <CuffUpPage {...props} />
  ) : (
    <CountPage {...props} />
  );
