/** Counts of requests and calls, written out in the text format that monitoring programs read. */

export interface Metrics {
  readonly request: (route: string, status: number, milliseconds: number) => void;
  readonly call: (path: string, outcome: string, milliseconds: number) => void;
  /** Rows of the audit could not be written. */
  readonly auditFailure: () => void;
  readonly text: () => string;
}

/** Upper bounds in seconds. */
const bounds = [0.005, 0.02, 0.05, 0.1, 0.3, 1, 3, 10] as const;

interface Spread {
  readonly buckets: number[];
  sum: number;
  count: number;
}

const spread = (): Spread => ({ buckets: bounds.map(() => 0), sum: 0, count: 0 });

const add = (to: Spread, milliseconds: number): void => {
  const seconds = milliseconds / 1000;
  bounds.forEach((bound, place) => {
    if (seconds <= bound) to.buckets[place]! += 1;
  });
  to.sum += seconds;
  to.count += 1;
};

const bump = (counts: Map<string, number>, labels: string): void => {
  counts.set(labels, (counts.get(labels) ?? 0) + 1);
};

const head = (name: string, help: string, type: 'counter' | 'gauge' | 'histogram') => [
  `# HELP ${name} ${help}`,
  `# TYPE ${name} ${type}`,
];

const histogramMetrics = (name: string, help: string, of: Spread): readonly string[] => [
  ...head(name, help, 'histogram'),
  ...bounds.map((bound, place) => `${name}_bucket{le="${bound}"} ${of.buckets[place]}`),
  `${name}_bucket{le="+Inf"} ${of.count}`,
  `${name}_sum ${of.sum}`,
  `${name}_count ${of.count}`,
];

const counterMetrics = (name: string, help: string, counts: ReadonlyMap<string, number>) => [
  ...head(name, help, 'counter'),
  ...[...counts].map(([labels, count]) => `${name}{${labels}} ${count}`),
];

export const requestMetrics = (): Metrics => {
  const requests = new Map<string, number>();
  const calls = new Map<string, number>();
  const requestTimes = spread();
  const callTimes = spread();
  let auditFailures = 0;
  return {
    request: (route, status, milliseconds) => {
      bump(requests, `route="${route}",status="${status}"`);
      add(requestTimes, milliseconds);
    },
    call: (path, outcome, milliseconds) => {
      bump(calls, `path="${path}",outcome="${outcome}"`);
      add(callTimes, milliseconds);
    },
    auditFailure: () => {
      auditFailures += 1;
    },
    text: () =>
      [
        ...head(
          'loadgate_audit_failures_total',
          'Times that rows of the audit could not be written.',
          'counter',
        ),
        `loadgate_audit_failures_total ${auditFailures}`,
        ...counterMetrics('loadgate_requests_total', 'Requests by route and status.', requests),
        ...histogramMetrics('loadgate_request_seconds', 'Time of a request.', requestTimes),
        ...counterMetrics('loadgate_calls_total', 'Procedure calls by path and outcome.', calls),
        ...histogramMetrics('loadgate_call_seconds', 'Time of a procedure call.', callTimes),
        ...head('process_resident_memory_bytes', 'Memory held.', 'gauge'),
        `process_resident_memory_bytes ${process.memoryUsage.rss()}`,
        ...head('process_uptime_seconds', 'Seconds since the start.', 'gauge'),
        `process_uptime_seconds ${Math.round(process.uptime())}`,
        '',
      ].join('\n'),
  };
};
