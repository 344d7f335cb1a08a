/** Looking back on one person under other values: asked by the address, so that it works without scripts. */

import type { ReactNode } from 'react';
import type { Joint } from '#core/exercises/joints.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/what-if.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorMessage } from '#ui/design-system/error-message.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import { WhatIfView } from '#ui/design-system/what-if/what-if-view.tsx';
import type { ReplaySettings, WhatIfOfPatient } from '../answers.ts';
import { movedBy, type Typed } from './asked.ts';
import { SettingFields, WeeksField } from './fields.tsx';
import { OnInventedPeople } from './on-invented-people.tsx';

export interface PatientWhatIfProps {
  readonly patientId: string;
  readonly joints: readonly Joint[];
  readonly settings: ReplaySettings;
  readonly typed: Typed;
  /** Null while nothing was asked. */
  readonly found: WhatIfOfPatient | null;
  /** The picture with the days in it. */
  readonly children?: ReactNode;
  /** Why it could not be worked out. */
  readonly refused: string | null;
}

const JointFields = ({ joints, typed }: Pick<PatientWhatIfProps, 'joints' | 'typed'>) => (
  <fieldset className="stack-close">
    <legend>{say('of-joint')}</legend>
    <SelectField
      name="joint"
      label={say('joint')}
      defaultValue={typed.joint ?? (joints.length === 1 ? joints[0]! : '')}
      options={joints.map((joint) => ({ value: joint, label: jointInWords(joint) }))}
    />
    <NumberField name="limit" label={say('limit')} isWhole defaultValue={typed.limit} />
    <NumberField name="usual" label={say('usual')} isWhole defaultValue={typed.usual} />
    <NumberField name="band" label={say('band')} isWhole defaultValue={typed.band} />
  </fieldset>
);

export const PatientWhatIf = (props: PatientWhatIfProps) => {
  const { patientId, settings, typed, found, refused } = props;
  const ofClinic = movedBy({ setting: typed.setting, value: typed.value });
  return (
    <div className="stack">
      <h2>{say('title')}</h2>
      <p>
        <a href={`/patients/${patientId}/review`}>{say('back')}</a>
      </p>
      <p>{say('lead')}</p>
      <form method="get" action={`/patients/${patientId}/review/what-if`} className="stack screen-only">
        <p className="soft">{say('left-out')}</p>
        <div className="what-if-fields">
          <JointFields joints={props.joints} typed={typed} />
          <SettingFields settings={settings} typed={typed} />
        </div>
        <WeeksField typed={typed} />
        <Button type="submit">{say('go')}</Button>
      </form>
      <section aria-live="polite">
        {refused ? <ErrorMessage id="what-if-refused">{refused}</ErrorMessage> : null}
        {found ? (
          <div className="stack">
            <WhatIfView found={found} />
            {props.children}
            {ofClinic ? <OnInventedPeople moved={ofClinic} /> : null}
          </div>
        ) : refused ? null : (
          <p>{say('warning')}</p>
        )}
      </section>
    </div>
  );
};
