'use client';
/** Settings by group, or by what is typed into the search; what is being changed stays while one looks elsewhere. */
import { useState } from 'react';
import type { SettingGroupId } from '#api/admin/setting-groups.ts';
import { say } from '#messages/en/staff/administration/settings.ts';
import { Button } from '#ui/design-system/button.tsx';
import { findSettings, groupTitle, type SettingGroup } from './setting-groups.ts';
import { SettingRow } from './setting-row.tsx';
import type { SettingDraft } from './setting-value.tsx';
import { SettingsAside } from './settings-aside.tsx';
import { ShortSigns, type ShortSignsProps } from './short-signs.tsx';
import { Version3Part } from './version-3-part.tsx';

export interface SettingsBrowserProps {
  readonly groups: readonly SettingGroup[];
  readonly mayChange: boolean;
  readonly zone: string;
  readonly shortSigns: ShortSignsProps['state'];
  /** As the address names them. */
  readonly start: { readonly group: string; readonly words: string };
  /** First-day jobs still open; 0 for whoever does not administer. */
  readonly openJobs: number;
}

/** The address follows, so that a reload or a link shows the same. */
const follow = (group: SettingGroupId) =>
  window.history.replaceState(window.history.state, '', `?${new URLSearchParams({ group })}`);

interface GroupProps extends SettingsBrowserProps {
  readonly group: SettingGroup;
  readonly drafts: Readonly<Record<string, SettingDraft>>;
  readonly saved: string | null;
  readonly onDraft: (id: string, draft: SettingDraft | null) => void;
  readonly onSaved: (id: string) => void;
}

const Group = (props: GroupProps) => {
  const { group, mayChange, zone, drafts } = props;
  return (
    <section className="setting-group" aria-labelledby={`group-${group.id}`}>
      <h2 id={`group-${group.id}`}>{groupTitle(group.id)}</h2>
      <ul className="plain-list">
        {group.settings.map((setting) => (
          <SettingRow
            key={setting.id}
            setting={setting}
            mayChange={mayChange}
            zone={zone}
            draft={drafts[setting.id] ?? null}
            isSaved={props.saved === setting.id}
            onDraft={(draft) => props.onDraft(setting.id, draft)}
            onSaved={() => props.onSaved(setting.id)}
          />
        ))}
      </ul>
    </section>
  );
};

/** What belongs to one group and is no single setting. */
const Besides = (props: SettingsBrowserProps & { readonly group: SettingGroupId }) => {
  if (props.group === 'phone') return <ShortSigns state={props.shortSigns} zone={props.zone} />;
  if (props.group !== 'rules-version') return null;
  return <Version3Part all={props.groups.flatMap(({ settings }) => settings)} mayChange={props.mayChange} />;
};

const FoundPlaces = ({ places }: { readonly places: readonly { href: string; title: string }[] }) =>
  places.length === 0 ? null : (
    <section className="setting-group" aria-labelledby="found-places">
      <h2 id="found-places">{say('places')}</h2>
      <ul>
        {places.map(({ href, title }) => (
          <li key={title}>
            <a href={href}>{title}</a>
          </li>
        ))}
      </ul>
    </section>
  );

const FoundCount = (props: {
  readonly words: string;
  readonly count: number;
  readonly isSearching: boolean;
}) => {
  const { words, count } = props;
  const said = count === 0 ? say('found.none', { words }) : say('found', { count, words });
  return (
    <p role="status" className={props.isSearching ? 'soft' : 'visually-hidden'}>
      {props.isSearching ? said : ''}
    </p>
  );
};

const useDrafts = () => {
  const [drafts, setDrafts] = useState<Readonly<Record<string, SettingDraft>>>({});
  const [saved, setSaved] = useState<string | null>(null);
  const onDraft = (id: string, draft: SettingDraft | null) => {
    setSaved(null);
    setDrafts(({ [id]: _before, ...others }) => (draft ? { ...others, [id]: draft } : others));
  };
  const onSaved = (id: string) => {
    onDraft(id, null);
    setSaved(id);
  };
  return { drafts, saved, onDraft, onSaved };
};

export const SettingsBrowser = (props: SettingsBrowserProps) => {
  const { groups, start } = props;
  const known = groups.find(({ id }) => id === start.group) ?? groups[0]!;
  const [groupId, setGroupId] = useState<SettingGroupId>(known.id);
  const [words, setWords] = useState(start.words);
  const changes = useDrafts();
  const isSearching = words.trim() !== '';
  const found = findSettings(groups, words, props.mayChange);
  const shown = isSearching ? found.groups : groups.filter(({ id }) => id === groupId);
  const choose = (id: SettingGroupId) => {
    setGroupId(id);
    setWords('');
    follow(id);
  };
  return (
    <div className="settings">
      <SettingsAside
        {...props}
        words={words}
        current={isSearching ? null : groupId}
        onWords={setWords}
        onGroup={choose}
      />
      <div className="stack">
        <FoundCount words={words} count={found.count} isSearching={isSearching} />
        {shown.map((group) => (
          <Group key={group.id} {...props} {...changes} group={group} />
        ))}
        {isSearching ? (
          <>
            <FoundPlaces places={found.places} />
            <Button tone="plain" onClick={() => choose(groupId)}>
              {say('found.clear')}
            </Button>
          </>
        ) : (
          <Besides {...props} group={groupId} />
        )}
      </div>
    </div>
  );
};
