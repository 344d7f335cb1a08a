'use client';
/** Search, and the groups with how many settings each holds: a list beside the settings, a select on a phone. */
import type { SettingGroupId } from '#api/admin/setting-groups.ts';
import { say } from '#messages/en/staff/administration/settings.ts';
import { SearchForm } from '#ui/design-system/search/search-form.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';

import { groupTitle, placesBeside, type SettingGroup } from './setting-groups.ts';

interface AsideProps {
  readonly groups: readonly SettingGroup[];
  readonly words: string;
  /** Null while a search is shown. */
  readonly current: SettingGroupId | null;
  readonly mayChange: boolean;
  readonly openJobs: number;
  readonly onWords: (words: string) => void;
  readonly onGroup: (id: SettingGroupId) => void;
}

const GroupList = ({ groups, current, onGroup }: Pick<AsideProps, 'groups' | 'current' | 'onGroup'>) => (
  <nav aria-label={say('groups')} className="group-list">
    <ul className="plain-list">
      {groups.map(({ id, settings }) => (
        <li key={id}>
          <a
            href={`?group=${id}`}
            aria-current={current === id ? 'true' : undefined}
            onClick={(event) => {
              event.preventDefault();
              onGroup(id);
            }}
          >
            <span>{groupTitle(id)}</span> <span className="soft">{settings.length}</span>
          </a>
        </li>
      ))}
    </ul>
  </nav>
);

const Places = () => (
  <section className="places stack-close" aria-labelledby="places">
    <h2 id="places">{say('places')}</h2>
    <ul className="plain-list small">
      {placesBeside.map(({ href, title }) => (
        <li key={title}>
          <a href={href}>{title}</a>
        </li>
      ))}
    </ul>
  </section>
);

export const SettingsAside = (props: AsideProps) => {
  const { groups, current, openJobs, onGroup } = props;
  return (
    <div className="settings-aside stack">
      <SearchForm
        action="/administration/settings"
        label={say('search')}
        hint={say('search.hint')}
        go={say('search.go')}
        words={props.words}
        onWords={props.onWords}
      />
      <div className="group-select">
        <SelectField
          name="group"
          label={say('group')}
          options={groups.map(({ id, settings }) => ({
            value: id,
            label: `${groupTitle(id)} (${settings.length})`,
          }))}
          value={current ?? ''}
          onChange={(event) => {
            const chosen = groups.find(({ id }) => id === event.target.value);
            if (chosen) onGroup(chosen.id);
          }}
        />
      </div>
      <GroupList {...props} />
      {openJobs > 0 ? (
        <p>
          <a href="/administration">{say('jobs-left', { count: openJobs })}</a>
        </p>
      ) : null}
      {props.mayChange ? <Places /> : null}
    </div>
  );
};
