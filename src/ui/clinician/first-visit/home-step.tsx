'use client';
/** What is at home: loads that doses are rounded to, and things that exercises need. Nothing is had before somebody has asked. */
import { householdEquipment } from '#core/exercises/equipment.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { boundField } from '#ui/design-system/bound-field.ts';
import { CheckboxGroup, CheckField } from '#ui/design-system/checkbox-group.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { capital } from '../capital.ts';
import { furtherThings, household, listIn, noLoads } from './first-visit-state.ts';
import { SavedStep, type StepProps, type TypedParts, useStep } from './step-frame.tsx';

const name = 'home.ownedEquipment';
const optionsOf = (things: readonly string[]) => things.map((value) => ({ value, label: capital(value) }));

const Loads = (parts: TypedParts) => (
  <>
    <TextField
      {...boundField(parts, 'home.ownedLoadsKg')}
      label={say('loads-at-home-kg')}
      hint={say('loads-separated')}
      inputMode="decimal"
    />
    <CheckField
      name="home.noLoads"
      label={say('no-loads')}
      isChecked={parts.typed['home.noLoads'] === noLoads}
      onSwitch={(isNone) => parts.onType('home.noLoads', isNone ? noLoads : '')}
    />
  </>
);

const furtherOptions = [
  { value: household, label: say('household'), hint: householdEquipment.join(', ') },
  ...optionsOf(furtherThings),
];

const Things = (parts: TypedParts) => {
  const things = listIn(parts.typed, name);
  const choose = (of: readonly string[], chosen: readonly string[]) =>
    parts.onType(name, [...things.filter((thing) => !of.includes(thing)), ...chosen].join('\n'));
  const inGroup = (of: readonly string[]) => things.filter((thing) => of.includes(thing));
  const first = [household, ...furtherThings];
  return (
    <>
      <CheckboxGroup
        name={name}
        legend={say('things-at-home')}
        hint={say('things-hint')}
        isWrapped
        className="visit-things"
        error={parts.errorOf(name)}
        options={furtherOptions}
        chosen={inGroup(first)}
        onChoose={(chosen) => choose(first, chosen)}
      />
      <Disclosure
        summary={say('part-of-household')}
        isOpen={inGroup(householdEquipment).length > 0 ? true : undefined}
      >
        <CheckboxGroup
          name={`${name}-household`}
          legend={say('part-of-household-legend')}
          isWrapped
          className="visit-things"
          options={optionsOf(householdEquipment)}
          chosen={inGroup(householdEquipment)}
          onChoose={(chosen) => choose(householdEquipment, chosen)}
        />
      </Disclosure>
    </>
  );
};

export const HomeStep = (props: StepProps) => {
  const at = useStep(props);
  const parts = { typed: at.typed, onType: at.onType, errorOf: at.submit.errorOf };
  return (
    <SavedStep {...props} at={at}>
      <Loads {...parts} />
      <Things {...parts} />
    </SavedStep>
  );
};
