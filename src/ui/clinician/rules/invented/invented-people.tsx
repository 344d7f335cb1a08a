'use client';
/** Ways of dosing beside each other on invented people, and the clinic's own rule tried among them. */
import dynamic from 'next/dynamic';
import { useState } from 'react';
import { say } from '#messages/en/staff/rules.ts';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import type { InventedPeople, TrialRow } from '../../answers.ts';
import { client } from '../../client.ts';
import { FormFrame } from '../../forms/form-frame.tsx';
import { typedFrom } from '../../forms/typed.ts';
import { type ModelId, pointsFor } from './trial-points.ts';
import { TrialTable } from './trial-table.tsx';

const Plot = dynamic(() => import('./trial-plot.tsx'), {
  ssr: false,
  loading: () => <p className="soft">{say('chart-loading')}</p>,
});

const typeWords: Readonly<Record<string, string>> = {
  all: say('type-all'),
  steady: say('type-steady'),
  scatter: say('type-scatter'),
  high: say('type-high'),
  flaring: say('type-flaring'),
  inflammatory: say('type-inflammatory'),
  fragile: say('type-fragile'),
  forgetful: say('type-forgetful'),
  eager: say('type-eager'),
  creeping: say('type-creeping'),
};
const typeOptions = Object.entries(typeWords).map(([value, label]) => ({ value, label }));
const modelOptions = [
  { value: 'first', label: say('model-first') },
  { value: 'second', label: say('model-second') },
];

type OwnRows = Readonly<Record<ModelId, readonly TrialRow[]>>;
const noneYet: OwnRows = { first: [], second: [] };

interface TryProps {
  readonly answer: InventedPeople;
  readonly model: ModelId;
  readonly onTried: (rows: readonly TrialRow[]) => void;
}

const TryOwnRule = ({ answer, model, onTried }: TryProps) => (
  <section className="stack" aria-labelledby="own-rule">
    <h3 id="own-rule">{say('own-heading')}</h3>
    <p className="soft">{say('own-about', { count: answer.people })}</p>
    <FormFrame
      prefix="own-"
      fields={answer.fields}
      start={typedFrom(answer.usual)}
      label={say('own-run')}
      busyLabel={say('own-running')}
      taken={say('own-done')}
      send={async (rule) => {
        onTried(await client.clinician.inventedPeople.tryOwnRule.mutate({ model, rule }));
      }}
    />
  </section>
);

const Intro = ({ answer }: { readonly answer: InventedPeople }) => (
  <>
    <p>
      <strong>{say('invented')}</strong> {say('invented-more')}
    </p>
    <p className="soft">
      {say('invented-run', {
        people: answer.people,
        weeks: answer.weeks,
        seed: String(answer.seed),
        date: answer.ranOn,
      })}
    </p>
  </>
);

export const InventedPeopleView = ({ answer }: { readonly answer: InventedPeople }) => {
  const [model, setModel] = useState<ModelId>('first');
  const [type, setType] = useState('all');
  const [own, setOwn] = useState(noneYet);
  const rows = answer.models.find(({ id }) => id === model)!.rows;
  const points = pointsFor(rows, own[model], type);
  return (
    <section className="stack" aria-labelledby="invented-people">
      <h2 id="invented-people">{say('invented-heading')}</h2>
      <Intro answer={answer} />
      <RadioGroup
        name="model"
        legend={say('model')}
        isWrapped
        options={modelOptions}
        chosen={model}
        onChoose={(chosen) => setModel(chosen === 'second' ? 'second' : 'first')}
      />
      <SelectField
        name="type"
        label={say('type')}
        options={typeOptions}
        value={type}
        onChange={(event) => setType(event.target.value || 'all')}
      />
      <figure className="trial-chart stack-close">
        <figcaption>{say('chart-caption')}</figcaption>
        <div className="trial-box" role="img" aria-label={say('chart-name')}>
          <Plot points={points} />
        </div>
      </figure>
      <TrialTable points={points} caption={typeWords[type] ?? type} />
      <p className="soft">{say('table-about')}</p>
      <TryOwnRule
        answer={answer}
        model={model}
        onTried={(tried) => setOwn((known) => ({ ...known, [model]: tried }))}
      />
    </section>
  );
};
