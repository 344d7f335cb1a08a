/** Single faults somebody thought of, each a way to put it into a good Bundle. */
import { type Any, resourceIn } from './good-bundle.ts';

interface Fault {
  readonly name: string;
  readonly make: (bundle: Any) => void;
}

const at =
  (name: string, change: (resource: Any) => void) =>
  (bundle: Any): void =>
    change(resourceIn(bundle, name));

const set = (name: string, field: string, value: unknown): Fault => ({
  name: `${name}.${field} = ${JSON.stringify(value)}`,
  make: at(name, (resource) => {
    const steps = field.split('.');
    const last = steps.pop()!;
    const parent = steps.reduce((part, step) => part[step], resource);
    if (value === undefined) delete parent[last];
    else parent[last] = value;
  }),
});

const without = (name: string, field: string): Fault => ({
  ...set(name, field, undefined),
  name: `${name} without ${field}`,
});

const missing: readonly Fault[] = [
  without('Observation/m-weight', 'status'),
  without('Observation/m-weight', 'code'),
  without('CarePlan', 'status'),
  without('CarePlan', 'intent'),
  without('CarePlan', 'subject'),
  without('ServiceRequest', 'intent'),
  without('Consent', 'scope'),
  without('Consent', 'category'),
  without('Consent', 'policyRule'),
  without('Goal', 'description'),
  without('Provenance', 'agent'),
  without('AuditEvent', 'source'),
  without('Condition', 'subject'),
  without('Patient', 'id'),
  without('Observation/m-bp', 'component.0.code'),
  { name: 'Bundle without type', make: (bundle) => delete bundle.type },
];

const codes: readonly Fault[] = [
  set('Observation/m-weight', 'status', 'done'),
  set('CarePlan', 'intent', 'maybe'),
  set('CarePlan', 'status', 'running'),
  set('ServiceRequest', 'status', 'signed'),
  set('AuditEvent', 'action', 'X'),
  set('AuditEvent', 'outcome', '5'),
  set('Goal', 'lifecycleStatus', 'reached'),
  set('Patient', 'telecom.0.system', 'telephone'),
  set('ServiceRequest', 'occurrenceTiming.repeat.periodUnit', 'weeks'),
  set('Observation/m-weight', 'code.coding.0.code', '29463-8'),
  set('Observation/m-weight', 'code.coding.1.code', 'measure.wait'),
  set('Observation/m-weight', 'code.coding.0.system', 'http://snomed.info/sct'),
  set('Observation/m-weight', 'category.0.coding.0.code', 'vitals'),
  { name: 'Bundle.type = "bag"', make: (bundle) => Object.assign(bundle, { type: 'bag' }) },
];

const daysAndIds: readonly Fault[] = [
  set('Patient', 'birthDate', '1958-13-01'),
  set('Patient', 'birthDate', '1958-02-30'),
  set('Patient', 'birthDate', '01/06/1958'),
  set('Observation/m-weight', 'issued', '2026-03-02T09:00:00'),
  set('Observation/m-weight', 'issued', '2026-04-31T09:00:00Z'),
  set('Observation/m-weight', 'effectiveDateTime', '2026-03-02T09:00'),
  set('Procedure', 'performedPeriod.start', '2026-03-02T25:00:00Z'),
  set('Condition', 'id', 'has_underscore'),
  set('Condition', 'id', 'x'.repeat(65)),
  set('Condition', 'id', ''),
];

const shapes: readonly Fault[] = [
  set('Patient', 'name', { family: 'Person' }),
  set('Patient', 'name.0.given', 'Test'),
  set('CarePlan', 'subject', 'Patient/patient-1'),
  set('Observation/m-bp', 'component', {}),
  set('Observation/m-weight', 'valueQuantity.value', '71.5'),
  set('ServiceRequest', 'note', 'Stop'),
  set('AuditEvent', 'agent.0.requestor', 'true'),
  set('Observation/m-weight', 'code', 'weight'),
  set('Observation/m-weight', 'weight', 71.5),
  set('Patient', 'birthdate', '1958-06-01'),
  set('Flag', 'severity', 'high'),
  set('Observation/m-weight', 'valueString', 'heavy'),
  set('Observation/m-weight', 'effectivePeriod', { start: '2026-03-02' }),
  set('Procedure', 'performedDateTime', '2026-03-02'),
  set('Patient', 'contact', []),
  set('Patient', 'contact', [{}]),
  set('Patient', 'name.0.family', ''),
  set('Patient', 'birthDate', null),
];

const between: readonly Fault[] = [
  set('CarePlan', 'subject.reference', 'Patient/nobody'),
  set('CarePlan', 'subject.reference', 'Practitioner/clinician-1'),
  set('CarePlan', 'subject.reference', 'https://elsewhere.invalid/Patient/patient-1'),
  set('CarePlan', 'subject.reference', 'urn:uuid:8f9bd45a-0b34-4b1e-93a7-0b9a8f1c2d3e'),
  set('Observation/m-weight', 'dataAbsentReason', { text: 'not known' }),
  set('Procedure', 'performedPeriod.end', '2026-03-01T09:00:00Z'),
  set('Observation/m-bp', 'component.0.valueQuantity.code', 'mmHg'),
  without('Observation/m-weight', 'valueQuantity.system'),
  without('Observation/m-weight', 'valueQuantity.value'),
  without('ServiceRequest', 'code'),
  { name: 'a resource twice', make: (bundle) => void bundle.entry.push(bundle.entry[1]) },
  { name: 'an entry without its address', make: (bundle) => delete bundle.entry[1].fullUrl },
  {
    name: 'an entry under another address',
    make: (bundle) => Object.assign(bundle.entry[1], { fullUrl: 'x' }),
  },
];

/** 71 of them, by hand. */
export const madeByHand: readonly Fault[] = [...missing, ...codes, ...daysAndIds, ...shapes, ...between];
