'use client';
/** Warning signs before, in the middle of and after a session, and what was ticked asked about once more. */
import { Notice } from '#ui/design-system/notice.tsx';
import { Advice } from '#ui/patient/questions/calls.tsx';
import { flagClassOf } from '#ui/patient/questions/flag-list.ts';
import { ConfirmSigns, SignsPage } from '#ui/patient/questions/signs-page.tsx';
import { t } from '#ui/patient/words.ts';
import type { FlagsWhen, SessionDraft } from '../draft.ts';
import { isCuffOn } from '../restriction.ts';
import { signFormOf } from '../sign-form.ts';
import type { PageProps } from './page-props.ts';

const answerOf = (draft: SessionDraft, when: FlagsWhen) =>
  when === 'before' ? draft.flagsBefore : when === 'during' ? draft.flagsDuring : null;

const FlagsPage = (props: PageProps & { readonly when: FlagsWhen }) => {
  const { draft, hasCuff, clinic, send, clock, when } = props;
  return (
    <SignsPage
      isShort={signFormOf(draft, when) === 'short'}
      question={t(`flags.${when}`)}
      clinic={clinic}
      hasCuff={hasCuff}
      ticked={draft.ticked[when] ?? answerOf(draft, when) ?? []}
      noneText={t('flags.no-none')}
      onTick={(values) => send({ type: 'tick', list: when, values })}
      onAnswer={(flags) => send({ type: 'flags', when, flags, now: clock() })}
      onWholeList={() => send({ type: 'whole-list', when })}
    />
  );
};

export const FlagsBeforePage = (props: PageProps) => <FlagsPage {...props} when="before" />;
export const FlagsDuringPage = (props: PageProps) => <FlagsPage {...props} when="during" />;
export const FlagsNowPage = (props: PageProps) => <FlagsPage {...props} when="now" />;

export const ConfirmPage = ({ draft, clinic, send, clock }: PageProps) => {
  const flags = draft.toConfirm?.flags ?? [];
  return (
    <ConfirmSigns
      flags={flags}
      advice={
        <>
          {draft.items.some(isCuffOn) ? <Notice tone="danger" title={t('care.cuff-first')} /> : null}
          <Advice level={flagClassOf(flags)} clinic={clinic} />
        </>
      }
      onAnswer={(isSlip) => send({ type: 'confirm', isSlip, now: clock() })}
    />
  );
};
