// Writes the words that may be rude of npm's cuss, a line each; what it rates as unlikely to be
// meant so (0 of 2) is left out, and so is what stands in the classroom list, which was read word
// by word.
// Usage: node dump_blocked.mjs CLASSROOM.tsv OUT
import {readFileSync, writeFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {pathToFileURL} from 'node:url'

const where = createRequire(new URL('../package.json', import.meta.url))
const {cuss} = await import(new URL('index.js', pathToFileURL(where.resolve('cuss'))).href)

const classroom = new Set(readFileSync(process.argv[2], 'utf8').split('\n')
  .filter((line) => line && !line.startsWith('#')).map((line) => line.split('\t')[1]))
const words = Object.entries(cuss)
  .filter(([word, rating]) => rating >= 1 && /^[a-z']+$/.test(word) && !classroom.has(word))
  .map(([word]) => word)
if (words.length < 1000) throw new Error(`cuss gave ${words.length} words only`)
writeFileSync(process.argv[3], words.join('\n') + '\n')
