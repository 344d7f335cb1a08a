'use client';
/** The words of the short question about warning signs, in full, for a clinician to approve or withdraw. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/administration.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import type { Text } from '#messages/text.ts';
import { Button } from '#ui/design-system/button.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { Asked } from '../../account/asked.tsx';
import { change } from '../../account/call.ts';
import { systemMoment } from '../../account/system-moment.ts';
import { useAsking } from '../../account/use-asking.ts';

export interface ShortSignsProps {
  readonly state: {
    readonly wording: number;
    readonly families: readonly Text[];
    readonly act: { readonly act: 'approved' | 'withdrawn'; readonly at: number; readonly by: string } | null;
    readonly isApproved: boolean;
    readonly mayAct: boolean;
  };
  readonly zone: string;
}

const Families = ({ families, tag }: { families: readonly Text[]; tag: LanguageTag }) => (
  <ul lang={tag}>
    {families.map((family) => (
      <li key={family[tag]}>{family[tag]}</li>
    ))}
  </ul>
);

export const ShortSigns = ({ state, zone }: ShortSignsProps) => {
  const router = useRouter();
  const asking = useAsking('short-signs');
  const { act, isApproved, wording } = state;
  const press = () =>
    void asking.ask(
      () => change(`clinician.shortSigns.${isApproved ? 'withdraw' : 'approve'}`, undefined),
      () => router.refresh(),
    );
  return (
    <section className="stack-close" id="short-signs">
      <h2>{say('short-signs')}</h2>
      <p>{say('short-signs.about')}</p>
      <p>
        <StatusTag shape={isApproved ? 'done' : 'unknown'} tone={isApproved ? 'accent' : 'care'}>
          {say(isApproved ? 'short-signs.approved' : 'short-signs.not-approved', { wording })}
        </StatusTag>{' '}
        {act ? (
          <span className="soft">
            {say(`short-signs.${act.act}-by`, { name: act.by, at: systemMoment(act.at, zone) })}
          </span>
        ) : null}
      </p>
      {languages.map(({ tag }) => (
        <Families key={tag} families={state.families} tag={tag} />
      ))}
      <Asked asking={asking} />
      {state.mayAct ? (
        <Button tone="plain" disabled={asking.isBusy} onClick={press}>
          {say(isApproved ? 'short-signs.withdraw' : 'short-signs.approve')}
        </Button>
      ) : (
        <p className="soft">{say('short-signs.clinician')}</p>
      )}
    </section>
  );
};
