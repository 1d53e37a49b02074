export { deckChart } from './deck-chart.ts'
