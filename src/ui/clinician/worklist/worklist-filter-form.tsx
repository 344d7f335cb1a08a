/** Narrowing the worklist. A plain form that asks for the page anew, so that it works without a script. */
import { worklistItemKinds } from '#core/worklist/item.ts';
import { say } from '#messages/en/staff/worklist.ts';
import type { WorklistFilters } from '../answers.ts';
import { itemStatusOf } from '../words.ts';
import type { WorklistFilter } from './worklist-query.ts';

interface Option {
  readonly value: string;
  readonly text: string;
}

const Select = (props: {
  readonly name: string;
  readonly label: string;
  readonly every: string;
  readonly options: readonly Option[];
  readonly chosen: string | null;
}) => (
  <div className="field">
    <label className="field-label" htmlFor={props.name}>
      {props.label}
    </label>
    <select id={props.name} name={props.name} className="input" defaultValue={props.chosen ?? ''}>
      <option value="">{props.every}</option>
      {props.options.map(({ value, text }) => (
        <option key={value} value={value}>
          {text}
        </option>
      ))}
    </select>
  </div>
);

export const WorklistFilterForm = ({
  filter,
  filters,
}: {
  readonly filter: WorklistFilter;
  readonly filters: WorklistFilters;
}) => (
  <form method="get" className="row row-end screen-only">
    <Select
      name="kind"
      label="Reason"
      every={say('filter.every-reason')}
      chosen={filter.kind}
      options={worklistItemKinds.map((kind) => ({ value: kind, text: itemStatusOf(kind).word }))}
    />
    <Select
      name="clinician"
      label="Clinician"
      every="everybody"
      chosen={filter.clinician}
      options={filters.clinicians.map(({ userId, name }) => ({ value: userId, text: name }))}
    />
    {filters.sites.length > 0 ? (
      <Select
        name="site"
        label="Site"
        every={say('filter.every-site')}
        chosen={filter.site}
        options={filters.sites.map(({ id, name }) => ({ value: id, text: name }))}
      />
    ) : null}
    <label className="choice">
      <input type="checkbox" name="mine" value="1" defaultChecked={filter.isMine} />
      <span className="choice-text">{say('filter.mine')}</span>
    </label>
    <button type="submit" className="button button-plain">
      Show
    </button>
  </form>
);
