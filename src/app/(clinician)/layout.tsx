/** Styles of the clinic's pages. Access is checked by each page, which also draws the frame. */
import type { ReactNode } from 'react';
import { serverCaller, signedInPerson } from '#server/http/caller.ts';
import { UncoveredNotice } from '#ui/clinician/uncovered-notice.tsx';
import { TypedEarly } from '#ui/design-system/typed-early.tsx';
import '../../ui/clinician/styles/clinician.css';
import '../../ui/clinician/styles/chart.css';

/** Whether to say that nobody takes over; a page asked for by anybody else says nothing of the clinic. */
const isUncovered = async (): Promise<boolean> => {
  const person = await signedInPerson();
  if (person?.role !== 'clinician' || person.setUp !== 'done') return false;
  return (await (await serverCaller()).clinician.team.covering()) === null;
};

const ClinicLayout = async ({ children }: { readonly children: ReactNode }) => (
  <>
    {(await isUncovered()) ? <UncoveredNotice /> : null}
    {children}
    <TypedEarly />
  </>
);

export default ClinicLayout;
