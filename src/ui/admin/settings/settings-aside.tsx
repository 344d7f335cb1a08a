'use client';
/** Search, and the groups with how many settings each holds: a list beside the settings, a select on a phone. */
import type { SettingGroupId } from '#api/admin/setting-groups.ts';
import { say } from '#messages/en/staff/administration/settings.ts';
import { Button } from '#ui/design-system/button.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { groupTitle, placesBeside, type SettingGroup } from './setting-groups.ts';

interface AsideProps {
  readonly groups: readonly SettingGroup[];
  readonly words: string;
  /** Null while a search is shown. */
  readonly current: SettingGroupId | null;
  readonly openJobs: number;
  readonly onWords: (words: string) => void;
  readonly onGroup: (id: SettingGroupId) => void;
}

/** Works without a script as well: the page is asked for by its address. */
const Search = ({ words, onWords }: Pick<AsideProps, 'words' | 'onWords'>) => (
  <search>
    <form method="get" action="/administration/settings" onSubmit={(event) => event.preventDefault()}>
      <TextField
        name="words"
        type="search"
        label={say('search')}
        hint={say('search.hint')}
        value={words}
        maxLength={100}
        autoComplete="off"
        onChange={(event) => onWords(event.target.value)}
      />
      <noscript>
        <Button type="submit" tone="plain">
          {say('search.go')}
        </Button>
      </noscript>
    </form>
  </search>
);

const GroupList = ({ groups, current, onGroup }: Omit<AsideProps, 'openJobs'>) => (
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
      <Search {...props} />
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
      <Places />
    </div>
  );
};
