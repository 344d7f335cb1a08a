/** The clinic's people and places. */
import { say } from '#messages/en/staff/administration.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { ActButton } from '../account/act-button.tsx';
import { AddStaffForm } from './add-staff-form.tsx';
import { FirstDay, type FirstDayJobs } from './first-day.tsx';
import { SiteForm } from './site-form.tsx';
import { type StaffLine, StaffList } from './staff-list.tsx';

export interface AdministrationScreenProps {
  readonly jobs: FirstDayJobs;
  readonly people: readonly StaffLine[];
  readonly sites: readonly {
    readonly id: string;
    readonly name: string;
    readonly address: string | null;
    readonly closedAt: number | null;
  }[];
}

export const AdministrationScreen = ({ people, sites, jobs }: AdministrationScreenProps) => (
  <div className="stack-wide">
    <PageHeading>{say('staff-and-sites')}</PageHeading>
    <FirstDay jobs={jobs} />
    <section className="stack" id="staff">
      <h2>Staff</h2>
      <StaffList people={people} />
    </section>
    <section className="stack" id="add-person">
      <h2>{say('add-title')}</h2>
      <AddStaffForm />
    </section>
    <section className="stack" id="sites">
      <h2>Sites</h2>
      {sites.length === 0 ? <p className="soft">{say('no-site')}</p> : null}
      <DefinitionList
        rows={sites.map((site) => ({
          key: site.id,
          name: site.name,
          value: [site.address ?? say('no-address'), site.closedAt ? 'Closed' : '']
            .filter(Boolean)
            .join('. '),
          action: site.closedAt ? null : (
            <ActButton
              path="admin.sites.close"
              input={{ siteId: site.id }}
              label="Close"
              about={site.name}
              question={say('close-question', { name: site.name })}
            />
          ),
        }))}
      />
      <SiteForm />
    </section>
  </div>
);
