import type { Plugin } from 'esbuild'

export function keptAnalysis(): Promise<Plugin>
