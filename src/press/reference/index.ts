export { editorGrammar } from './editor-grammar.ts'
export { railroad } from './railroad.ts'
