'use client';
/** The plan for the patient as a file to print, in the language, size and number of weeks chosen. */
import { useState } from 'react';
import { say } from '#messages/en/staff/documents.ts';
import { languages } from '#messages/languages.ts';
import { CheckField } from '#ui/design-system/checkbox-group.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';

/** Weeks that are offered; the address takes any up to twelve. */
const weeksOffered = [1, 2, 4, 6] as const;

const options = {
  language: languages.map(({ tag, name }) => ({ value: tag, label: name })),
  paper: (['a4', 'letter'] as const).map((size) => ({ value: size, label: say(size) })),
  weeks: weeksOffered.map((count) => ({ value: String(count), label: say('weeks-count', { count }) })),
};
type Choice = keyof typeof options;

export const PrintPlan = ({ patientId }: { readonly patientId: string }) => {
  const [chosen, setChosen] = useState<Readonly<Record<Choice, string>>>({
    language: 'en',
    paper: 'a4',
    weeks: '1',
  });
  const [isLarge, setLarge] = useState(false);
  const address = new URLSearchParams({ patient: patientId, ...chosen, large: isLarge ? '1' : '0' });
  return (
    <div className="stack-close">
      <p>{say('plan-hint')}</p>
      <div className="row">
        {(['language', 'paper', 'weeks'] as const).map((name) => (
          <SelectField
            key={name}
            name={`plan-${name}`}
            label={say(name)}
            options={options[name]}
            value={chosen[name]}
            onChange={({ target }) =>
              setChosen((before) => ({ ...before, [name]: target.value || before[name] }))
            }
          />
        ))}
        <CheckField name="plan-large" label={say('large-type')} isChecked={isLarge} onSwitch={setLarge} />
      </div>
      <p>
        <a href={`/papers/plan?${address}`} target="_blank" rel="noreferrer">
          {say('open-the-plan')}
        </a>
      </p>
    </div>
  );
};
