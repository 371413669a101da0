// Writes the pronouncing dictionary of npm's cmu-pronouncing-dictionary as plain lines, so that the
// compiler of the lexicon needs to read neither JavaScript nor JSON:
//   word TAB pronunciation TAB second pronunciation ...
// Usage: node dump_dictionary.mjs OUT
import {writeFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {pathToFileURL} from 'node:url'

const where = createRequire(new URL('../package.json', import.meta.url))
const {dictionary} = await import(pathToFileURL(where.resolve('cmu-pronouncing-dictionary')).href)

const words = new Map()
for (const [key, said] of Object.entries(dictionary)) {
  const [, word, number] = /^(.*?)(?:\((\d+)\))?$/.exec(key)
  if (!words.has(word)) words.set(word, [])
  const sounds = said.replace(/\s*#.*$/, '') // a few lines end in a remark
  words.get(word).push([number ? Number(number) : 1, sounds])
}
const lines = [...words].map(([word, all]) => {
  all.sort((a, b) => a[0] - b[0])
  return [word, ...all.map(([, said]) => said)].join('\t')
})
writeFileSync(process.argv[2], lines.join('\n') + '\n')
