import type { Finding, Found } from '../findings/index.ts'
import { decode } from '../text/index.ts'

/** The text of a table: UTF-8, UTF-16, or Windows-1252, which older spreadsheets save. */
export function tableText(bytes: Uint8Array, name: string): Found<string> {
  const { value, findings } = decode(bytes, name)
  const isOld =
    findings.length > 0 && findings.every(({ rule }: Pick<Finding, 'rule'>) => rule === 'syntax/not-utf-8')
  return isOld ? { value: new TextDecoder('windows-1252').decode(bytes), findings: [] } : { value, findings }
}
