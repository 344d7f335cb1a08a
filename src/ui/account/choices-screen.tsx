/** Every number the clinic may set, and when it was set last. */
import { DefinitionList } from '#ui/shared/definition-list.tsx';
import { Disclosure } from '#ui/shared/disclosure.tsx';
import { PageHeading } from '#ui/shared/page-heading.tsx';
import { ChoicesForm, type ChoicesFormProps } from './choices-form.tsx';
import { systemMoment } from './system-moment.ts';

export interface ChoicesScreenProps {
  readonly list: ChoicesFormProps & {
    readonly changes: readonly {
      readonly version: number;
      readonly changedAt: number;
      readonly reason: string;
    }[];
  };
  readonly zone: string;
}

export const ChoicesScreen = ({ list, zone }: ChoicesScreenProps) => (
  <div className="stack-wide">
    <PageHeading>Clinic choices</PageHeading>
    <p>
      Numbers no source fixes. Each decision keeps the numbers it was made with; a change counts from the next
      one on. {list.mayChange ? '' : 'They are changed by those who administer the clinic.'}
    </p>
    <ChoicesForm areas={list.areas} mayChange={list.mayChange} />
    <Disclosure summary={`Changes so far: ${list.changes.length}`}>
      <DefinitionList
        rows={list.changes.map((one) => ({
          key: String(one.version),
          name: systemMoment(one.changedAt, zone),
          value: one.reason,
        }))}
      />
    </Disclosure>
  </div>
);
