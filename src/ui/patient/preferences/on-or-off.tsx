'use client';
/** What is off until somebody wants it. */
import { useEffect, useState } from 'react';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { choose, isChosen, type OnOrOffName } from './chosen.ts';

type Answer = 'no' | 'yes';

export interface OnOrOffProps {
  readonly name: OnOrOffName;
  readonly legend: string;
  readonly hint: string;
  readonly no: string;
  readonly yes: string;
}

export const OnOrOff = ({ name, legend, hint, no, yes }: OnOrOffProps) => {
  const [now, setNow] = useState<Answer | null>(null);
  useEffect(() => setNow(isChosen(name) ? 'yes' : 'no'), [name]);
  const take = (answer: Answer) => {
    choose(name, answer);
    setNow(answer);
  };
  return (
    <RadioGroup<Answer>
      name={name}
      legend={legend}
      hint={hint}
      options={[
        { value: 'no', label: no },
        { value: 'yes', label: yes },
      ]}
      chosen={now}
      onChoose={take}
    />
  );
};
