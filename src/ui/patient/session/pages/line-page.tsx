'use client';
/** One exercise before its first set: how, how much, which weight. */
import { useState } from 'react';
import { Button } from '#ui/shared/button.tsx';
import { ConfirmQuestion } from '#ui/shared/confirm-question.tsx';
import { Disclosure } from '#ui/shared/disclosure.tsx';
import { ErrorSummary, type Problem } from '#ui/shared/error-summary.tsx';
import { NumberField } from '#ui/shared/number-field.tsx';
import { PageHeading } from '#ui/shared/page-heading.tsx';
import { RadioGroup } from '#ui/shared/radio-group.tsx';
import { readNumber } from '#ui/shared/read-number.ts';
import { doseLines, doseTitle } from '#ui/shared/text/dose-text.ts';
import { numberText } from '#ui/shared/text/text-of-time.ts';
import { kilogramsOf, weightFigure, weightText, weightUnit } from '#ui/shared/text/weight-text.ts';
import { say, tell } from '#ui/words.ts';
import { HowTo } from '../../figures/how-to.tsx';
import { type LineDraft, plannedLoadKg } from '../draft.ts';
import { isCuffOn } from '../restriction.ts';
import { asksLoad } from '../steps.ts';
import type { PageProps } from './page-props.ts';

type Pick = 'planned' | 'other';

/** The record takes no more. */
const mostKg = 500;

/** A tenth over the plan is where the clinic hears of it as well. */
const isFarOver = (loadKg: number, plannedKg: number) => loadKg > plannedKg * 1.1;

const loadProblem = (pick: Pick | null, typed: string): Problem | null => {
  if (pick === null) return { field: 'load', text: say('line.load-missing') };
  if (pick === 'planned') return null;
  const read = readNumber(typed);
  if (read === null || Number.isNaN(read)) return { field: 'load-kg', text: say('line.load-number') };
  const loadKg = kilogramsOf(read);
  if (loadKg < 0 || loadKg > mostKg) {
    return { field: 'load-kg', text: say('line.load-range', { weight: weightText(mostKg) }) };
  }
  return null;
};

/** What is on the page about the weight, kept apart from what has been taken as the answer. */
const useLoad = (line: LineDraft) => {
  const plannedKg = plannedLoadKg(line.dose);
  const given = line.loadKg;
  const [pick, setPick] = useState<Pick | null>(
    given === null ? null : given === plannedKg ? 'planned' : 'other',
  );
  const [typed, setTyped] = useState(
    given === null || given === plannedKg ? '' : numberText(Number(weightFigure(given))),
  );
  const [sure, setSure] = useState<number | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  return { plannedKg, pick, setPick, typed, setTyped, sure, setSure, problem, setProblem };
};

const LoadQuestion = ({ load }: { readonly load: ReturnType<typeof useLoad> }) => {
  const errorAt = (field: string) => (load.problem?.field === field ? load.problem.text : undefined);
  return (
    <>
      <RadioGroup<Pick>
        name="load"
        legend={say('line.load')}
        error={errorAt('load')}
        options={[
          { value: 'planned', label: say('line.load-planned', { weight: weightText(load.plannedKg) }) },
          { value: 'other', label: say('line.load-other') },
        ]}
        chosen={load.pick}
        onChoose={load.setPick}
      />
      {load.pick === 'other' ? (
        <NumberField
          name="load-kg"
          label={say('line.load-other-label')}
          unit={weightUnit()}
          error={errorAt('load-kg')}
          value={load.typed}
          onChange={(event) => load.setTyped(event.target.value)}
        />
      ) : null}
    </>
  );
};

const About = ({ line }: { readonly line: LineDraft }) => (
  <>
    <p className="dose figure">{doseTitle(line.dose)}</p>
    <ul className="dose-lines">
      {doseLines(line.dose).map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
    <section className="stack-close">
      <h2>{say('line.how')}</h2>
      <HowTo exerciseId={line.dose.exerciseId} instructions={line.instructions} />
    </section>
    {line.cautions.length > 0 ? (
      <Disclosure summary={say('today.cautions')}>
        <ul>
          {line.cautions.map((text) => (
            <li key={text}>{tell(text)}</li>
          ))}
        </ul>
      </Disclosure>
    ) : null}
  </>
);

const Leaving = ({ line, index, send }: { line: LineDraft; index: number; send: PageProps['send'] }) =>
  line.sets.length > 0 || isCuffOn(line) ? null : (
    <div className="actions-quiet">
      {line.isLighter ? null : (
        <Button tone="quiet" onClick={() => send({ type: 'lighter' })}>
          {say('today.lighter')}
        </Button>
      )}
      <Button tone="quiet" onClick={() => send({ type: 'leave-out', line: index })}>
        {say('line.skip')}
      </Button>
      <Button tone="quiet" onClick={() => send({ type: 'finish-here' })}>
        {say('line.finish')}
      </Button>
    </div>
  );

export const LinePage = ({ draft, line: index, send }: PageProps) => {
  const line = draft.lines[index]!;
  const load = useLoad(line);
  const take = (loadKg: number | null) => {
    if (loadKg !== null) send({ type: 'load', line: index, loadKg });
    send({ type: 'next' });
  };
  const goOn = () => {
    if (!asksLoad(line)) return take(null);
    const problem = loadProblem(load.pick, load.typed);
    load.setProblem(problem);
    if (problem) return;
    const loadKg = load.pick === 'planned' ? load.plannedKg : kilogramsOf(readNumber(load.typed) ?? 0);
    if (isFarOver(loadKg, load.plannedKg) && loadKg !== line.loadKg) load.setSure(loadKg);
    else take(loadKg);
  };
  const number = draft.lines.indexOf(line) + 1;
  return (
    <div className="stack">
      <ErrorSummary problems={load.problem ? [load.problem] : []} />
      <PageHeading caption={say('session.caption', { number, of: draft.lines.length })}>
        {tell(line.title)}
      </PageHeading>
      <About line={line} />
      {asksLoad(line) ? <LoadQuestion load={load} /> : null}
      {load.sure === null ? (
        <Button isLarge isWide onClick={goOn}>
          {say(line.dose.method === 'occlusion' ? 'ask.continue' : 'line.start')}
        </Button>
      ) : (
        <ConfirmQuestion
          question={say('line.load-sure', { weight: weightText(load.sure) })}
          yes={say('line.load-sure-yes', { weight: weightText(load.sure) })}
          no={say('line.load-sure-no')}
          onYes={() => take(load.sure)}
          onNo={() => load.setSure(null)}
        >
          <p>{say('line.load-sure-note')}</p>
        </ConfirmQuestion>
      )}
      <Leaving line={line} index={index} send={send} />
    </div>
  );
};
