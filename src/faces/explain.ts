import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { nearest } from '../text/index.ts'
import { Complaint } from './complaint.ts'
import { home } from './home.ts'

/** Where the pages of the rules stand: beside their code, or, where the program is installed without it, beside the program. */
const pagesFolder = join(home, existsSync(join(home, 'src', 'rules')) ? 'src' : 'dist', 'rules')

/** The page of one rule as Markdown, or a list of the rules of a group, as of "belay"; complains of an unknown one with the nearest. */
export function explainRule(slug: string): string {
  const slugs = allSlugs()
  const group = slugs.filter(one => one.startsWith(`${slug}/`))
  if (group.length > 0) return listOf(group)
  if (!slugs.includes(slug)) {
    const near = nearest(slug, slugs)
    const offer = near.length > 0 ? ` Did you mean ${near.join(', ')}?` : ''
    throw new Complaint(`there is no rule "${slug}".${offer} "crosstree explain" lists all of them.`)
  }
  return pageOf(slug)
}

/** All rules, one a line: the slug first, then what the page's first sentence says. */
export const explainAll = (): string => listOf(allSlugs())

function listOf(slugs: readonly string[]): string {
  const widest = Math.max(...slugs.map(slug => slug.length))
  return slugs.map(slug => `${slug.padEnd(widest)}  ${firstSentence(pageOf(slug))}\n`).join('')
}

function allSlugs(): readonly string[] {
  const groups = readdirSync(pagesFolder, { withFileTypes: true }).filter(entry => entry.isDirectory())
  const slugs = groups.flatMap(({ name: group }) =>
    readdirSync(join(pagesFolder, group))
      .filter(file => file.endsWith('.md'))
      .map(file => `${group}/${file.slice(0, -'.md'.length)}`),
  )
  return slugs.sort()
}

const pageOf = (slug: string) => readFileSync(join(pagesFolder, `${slug}.md`), 'utf8')

/** The first sentence of the first paragraph that is neither a heading nor a label. */
function firstSentence(page: string): string {
  const paragraphs = page.split(/\n\s*\n/).map(one => one.trim().replace(/\s+/g, ' '))
  const first = paragraphs.find(one => one !== '' && !/^(#|\*\*|```|Severity)/.test(one)) ?? ''
  return /^.*?[.!?](?=\s+\p{Lu}|$)/u.exec(first)?.[0] ?? first
}
