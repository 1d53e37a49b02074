import type { Finding, Fix } from '../../findings/index.ts'
import type { Span } from '../../text/index.ts'
import type { Lines } from './lines.ts'

/** Findings as SARIF 2.1.0 (OASIS Standard, 27 March 2020), with stable rule ids and relative paths. */
export function sarifFindings(findings: readonly Finding[], lines: Lines, version: string): string {
  const rules = [...new Set(findings.map(({ rule }) => rule))].sort()
  const log = {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'crosstree', semanticVersion: version, rules: rules.map(id => ({ id })) } },
        columnKind: 'utf16CodeUnits',
        results: findings.map(finding => result(finding, rules, lines)),
      },
    ],
  }
  return `${JSON.stringify(log, null, 2)}\n`
}

function result(
  { rule, severity, at, message, aboard, remedy, related, fix }: Finding,
  rules: readonly string[],
  lines: Lines,
) {
  return {
    ruleId: rule,
    ruleIndex: rules.indexOf(rule),
    level: severity,
    message: { text: [message, aboard, remedy].filter(part => part !== undefined).join(' ') },
    locations: [location(at, lines)],
    ...(related.length === 0
      ? {}
      : {
          relatedLocations: related.map((one, index) => ({
            id: index + 1,
            ...location(one.at, lines),
            message: { text: one.message },
          })),
        }),
    ...(fix === undefined ? {} : { fixes: [fixed(fix, lines)] }),
  }
}

function fixed({ title, edits }: Fix, lines: Lines) {
  const sources = [...new Set(edits.map(({ at }) => at.source))]
  return {
    description: { text: title },
    artifactChanges: sources.map(source => ({
      artifactLocation: { uri: uriOf(source) },
      replacements: edits
        .filter(({ at }) => at.source === source)
        .map(({ at, text }) => ({ deletedRegion: regionOf(at, lines), insertedContent: { text } })),
    })),
  }
}

function location(at: Span, lines: Lines) {
  return {
    physicalLocation: { artifactLocation: { uri: uriOf(at.source) }, region: regionOf(at, lines) },
  }
}

function regionOf(at: Span, lines: Lines) {
  const start = lines.start(at)
  const end = lines.end(at)
  return { startLine: start.line, startColumn: start.column, endLine: end.line, endColumn: end.column }
}

/** A path as a relative URI: each part escaped, and a first part with a colon kept from reading as a scheme. */
function uriOf(path: string): string {
  const uri = path
    .replace(/\p{Cs}/gu, '\ufffd')
    .split('/')
    .map(encodeURIComponent)
    .join('/')
  return /^[^/]*%3A/i.test(uri) ? `./${uri}` : uri
}
