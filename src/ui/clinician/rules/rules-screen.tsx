/** Every rule of the engine: in plain words, when it speaks and what it leaves, then who says so. */
import { say as sayProof } from '#messages/en/staff/review/proof.ts';
import { say } from '#messages/en/staff/rules.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { InventedPeople, RulesTable } from '../answers.ts';
import { effectInWords } from '../review/reason-view.tsx';
import { SearchedList } from '../search/searched-list.tsx';
import { CitationNote } from '../support-note.tsx';
import { InventedPeopleView } from './invented/invented-people.tsx';

/** What is behind it stands on its own page. */
type Rule = Omit<RulesTable['rules'][number], 'restsOnWhat' | 'notProven' | 'proof'>;

export const Setting = ({ setting }: { readonly setting: Rule['settings'][number] }) => (
  <li>
    {setting.title}:{' '}
    <strong>
      {setting.isSwitch ? say(setting.value === 1 ? 'setting.on' : 'setting.off') : setting.value}
    </strong>{' '}
    {setting.isDefault
      ? say('setting.default', { min: setting.min, max: setting.max })
      : say('setting.own', { min: setting.min, max: setting.max })}{' '}
    <span className="soft">{setting.why}</span>
  </li>
);

const overruledInWords = (count: number): string =>
  count === 0 ? say('overridden-never') : count === 1 ? say('overridden-once') : say('overridden', { count });

export const whenInWords = (rule: Rule): string =>
  say('when', { threshold: rule.threshold, effect: effectInWords(rule.effect) });

const Evidence = ({ rule }: { readonly rule: Rule }) =>
  rule.citations.length === 0 ? (
    <p className="source-note">{say('own-setting')}</p>
  ) : (
    <Disclosure summary={say('evidence', { count: rule.citations.length })}>
      {rule.restsOn === 'clinic-choice' ? <p className="source-note">{say('own-setting-sourced')}</p> : null}
      {rule.citations.map((citation) => (
        <CitationNote key={`${citation.source} ${citation.locator}`} citation={citation} />
      ))}
    </Disclosure>
  );

const RuleView = ({ rule }: { readonly rule: Rule }) => (
  <article className="keep-together stack-close rule" id={rule.id}>
    <h2>{rule.title}</h2>
    <p>
      {say('patient-reads')}{' '}
      {rule.patientReads.map((sentence) => (
        <span key={sentence}>
          <q>{sentence}</q>{' '}
        </span>
      ))}
    </p>
    <p>{whenInWords(rule)}</p>
    {rule.settings.length > 0 ? (
      <ul className="plain-list">
        {rule.settings.map((setting) => (
          <Setting key={setting.id} setting={setting} />
        ))}
      </ul>
    ) : null}
    <Evidence rule={rule} />
    <p className="soft small">
      {say('id', { id: rule.id })} {overruledInWords(rule.overruled)}{' '}
      <a href={`/rules/${rule.id}`}>{sayProof('link')}</a>
    </p>
  </article>
);

/** Each rule by its id, its words and the settings it reads. */
export const ruleSections = (rules: readonly Rule[]) => [
  {
    key: 'rules',
    heading: null,
    items: rules.map((rule) => ({
      key: rule.id,
      text: [
        rule.id,
        rule.title,
        whenInWords(rule),
        ...rule.patientReads,
        ...rule.settings.map(({ title }) => title),
      ].join(' '),
      shown: <RuleView rule={rule} />,
    })),
  },
];

interface RulesScreenProps {
  readonly table: RulesTable;
  readonly invented: InventedPeople;
  /** What is searched for, as the address names it. */
  readonly words: string;
}

export const RulesScreen = ({ table, invented, words }: RulesScreenProps) => (
  <div className="stack-wide">
    <div className="stack">
      <PageHeading caption={<a href="/calculations">Calculations</a>}>Rules</PageHeading>
      <p className="lead">{say('lead', { count: table.rules.length, version: table.version })}</p>
      <p>
        <a href="#invented-people">{say('to-invented')}</a>
      </p>
      <p>
        <a href="/rules/followed">{say('to-followed')}</a>
      </p>
      <p>
        <a href="/administration/figures">{say('to-figures')}</a>
      </p>
      <p>
        <a href="/rules/what-if">{say('to-what-if')}</a>
      </p>
      {table.isVersion3 ? <p>{say('version-3')}</p> : null}
    </div>
    <SearchedList
      action="/rules"
      label={say('search')}
      hint={say('search.hint')}
      start={words}
      sections={ruleSections(table.rules)}
      className="rules"
    />
    <InventedPeopleView answer={invented} />
  </div>
);
