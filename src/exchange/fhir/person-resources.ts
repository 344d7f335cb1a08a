/** Everything of one person as FHIR resources. Practitioners and the clinic are shared by all and stand apart. */
import type { FhirResource } from 'fhir/r4';
import { dayAt } from '#data/civil-time.ts';
import type { PersonRecord } from '../person-record.ts';
import { ownCodeSystem } from './codes/code-system.ts';
import { conditions, consents, episodesOfCare, goals } from './resources/care.ts';
import { communications, eventObservations, impressions } from './resources/contacts.ts';
import { detectedIssues } from './resources/decisions.ts';
import { flags } from './resources/flags.ts';
import { importedConditions, importedObservations } from './resources/imported.ts';
import { jointObservations, measurementObservations } from './resources/measurements.ts';
import { morningObservations } from './resources/mornings.ts';
import { organizationOf, patientResource, practitionerOf } from './resources/people.ts';
import { carePlans, serviceRequests } from './resources/prescriptions.ts';
import { questionnaireResponses } from './resources/questions.ts';
import { sessionResources } from './resources/sessions.ts';
import { auditEvents, provenances } from './resources/trail.ts';

export const personResources = (record: PersonRecord): readonly FhirResource[] => {
  const requests = serviceRequests(record);
  return [
    patientResource(record),
    ...episodesOfCare(record),
    ...conditions(record),
    ...consents(record),
    ...questionnaireResponses(record),
    ...goals(record),
    ...carePlans(record, requests),
    ...requests,
    ...measurementObservations(record),
    ...jointObservations(record),
    ...eventObservations(record),
    ...sessionResources(record),
    ...morningObservations(record),
    ...importedConditions(record),
    ...importedObservations(record),
    ...detectedIssues(record),
    ...flags(record, dayAt(record.madeAt, record.clinic.zone)),
    ...communications(record),
    ...impressions(record),
    ...provenances(record),
    ...auditEvents(record),
  ];
};

/** What everybody's resources refer to: the clinic, its staff, and the codes of this product. */
export const sharedResources = (
  record: Pick<PersonRecord, 'clinic' | 'signIns'>,
): readonly FhirResource[] => [
  ownCodeSystem(),
  organizationOf(record.clinic),
  ...[...record.signIns.values()].filter(({ role }) => role !== 'patient').map(practitionerOf),
];
