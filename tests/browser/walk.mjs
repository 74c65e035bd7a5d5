// Walks every page of a filled demo in a real browser: as each role, in two languages, on a phone and on a desk.
//
// Takes, from the environment: URL, STAFF_NAME, PASSWORD, CHROMIUM, and PICTURES (a folder, or nothing). Prints a line
// for each thing that is wrong and `walked N` at the end; exits 1 if anything was wrong.
import { createRequire } from 'node:module'
import { mkdirSync, readFileSync } from 'node:fs'

const require = createRequire((process.env.MODULES ?? import.meta.dirname) + '/')
const { chromium } = require('playwright-core')
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8')
const { URL: url, STAFF_NAME: lead, PASSWORD: password, CHROMIUM: executablePath, PICTURES: pictures } = process.env

const wrong = []
let walked = 0
const say = told => { wrong.push(told); console.log(told) }

const args = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync']
const browser = await chromium.launch({ executablePath, args })
if (pictures) mkdirSync(pictures, { recursive: true })

// A browser of its own for each person, that tells of every call that leaves the site and every error.
async function person(name, width, lang) {
  const context = await browser.newContext({ viewport: { width, height: 740 }, locale: lang, hasTouch: width < 500 })
  const page = await context.newPage()
  page.on('request', request => {
    if (!request.url().startsWith(url) && !request.url().startsWith('data:')) say(`${name}: calls ${request.url()}`)
  })
  page.on('pageerror', error => say(`${name}: ${error}`))
  page.on('console', line => {
    if (line.type() === 'error' && !/status of 4\d\d/.test(line.text())) say(`${name}: ${line.text()}`)
  })
  return page
}

async function enter(page, name, word) {
  await page.goto(`${url}/login`)
  await page.fill('#name', name)
  await page.fill('#password', word)
  await page.press('#password', 'Enter')
  await page.waitForURL(`${url}/`)
}

// What must hold of every page, whatever it shows.
async function look(page, name, { status, lang, response }) {
  walked += 1
  if (response && response.status() !== status) say(`${name}: ${response.status()} instead of ${status}`)
  const told = await page.evaluate(() => ({
    lang: document.documentElement.lang,
    wide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    empty: document.querySelector('main')?.innerText.trim().length ?? 0,
    // A message that no catalogue has is shown as its id.
    ids: (document.body.innerText.match(/\b(nav|today|map|report|out|photo|tokens|house|figure|form|setup|cast|prog|visit|check|said|did|days|try)-[a-z_]+/g) ?? []),
    small: [...document.querySelectorAll('button, input:not([type=hidden]), select')].filter(e => {
      const box = e.getBoundingClientRect()
      return box.height > 0 && box.height < 24
    }).map(e => e.outerHTML.slice(0, 80)),
  }))
  if (told.lang !== lang) say(`${name}: in ${told.lang} instead of ${lang}`)
  if (told.wide > 0) say(`${name}: ${told.wide} px wider than the screen`)
  if (told.empty === 0) say(`${name}: nothing to read`)
  if (told.ids.length && !name.startsWith('wording')) say(`${name}: shows ${told.ids}`)
  if (told.small.filter(e => !/radio|checkbox/.test(e)).length) say(`${name}: too small to touch: ${told.small}`)
  await page.evaluate(axe)
  const found = await page.evaluate(() => globalThis.axe.run(document, { resultTypes: ['violations'] }))
  for (const { id, impact, nodes } of found.violations) {
    if (impact === 'serious' || impact === 'critical') {
      say(`${name}: ${impact}: ${id}: ${nodes.slice(0, 3).map(node => node.html.slice(0, 160)).join(' | ')}`)
    }
  }
  if (pictures) await page.screenshot({ path: `${pictures}/${name}.png`, fullPage: true })
}

// Presses Tab until the focus is where it is wanted, as somebody without a mouse would.
async function tabTo(page, selector, most = 250) {
  for (let n = 0; n < most; n += 1) {
    await page.keyboard.press('Tab')
    const there = await page.evaluate(wanted => document.activeElement?.matches(wanted) ?? false, selector)
    if (there) {
      const seen = await page.evaluate(() => {
        const style = getComputedStyle(document.activeElement)
        return style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2
      })
      if (!seen) say(`the focus on ${selector} cannot be seen`)
      return true
    }
  }
  say(`${selector} is not reached by ${most} Tabs`)
  return false
}

// The lead makes somebody of each role in each language.
const langs = ['en', 'hi']
const roles = ['viewer', 'field', 'lead']
const first = await person('lead', 1280, 'en')
await enter(first, lead, password)
const words = {}
for (const lang of langs) {
  for (const role of roles) {
    const name = `${role} ${lang}`
    await first.goto(`${url}/setup`)
    await first.click('#staff .add summary')
    await first.fill('#s-name', name)
    await first.selectOption('#s-role', role)
    await first.selectOption('#s-lang', lang)
    await first.click('#staff .add button')
    words[name] = (await first.textContent('.notice')).match(/password ([0-9a-f]+)/)[1]
  }
}
// A danger that nobody has taken, so that its states are walked too.
await first.goto(`${url}/try?phone=%2B99900000102`)
await first.fill('#text', 'strong gas smell in the kitchen')
await first.click('.compose button')

const pages = [
  ['today', '/', 'viewer'], ['today-well', '/?need=well', 'viewer'], ['today-nobody', '/?find=zzz', 'viewer'],
  ['household', '/household/1', 'viewer'], ['danger', '/household/2', 'viewer'],
  ['household-year', '/household/3?days=365', 'viewer'], ['household-years', '/household/3?days=1826', 'viewer'],
  ['days', '/household/2/days', 'viewer'], ['nowhere', '/nowhere', 'viewer', 404], ['what-if', '/household/1?ration=3&water=6#what-if', 'viewer'],
  ['what-if-wrong', '/household/1?ration=much', 'viewer'], ['nobody', '/household/999', 'viewer', 404],
  ['visit-new', '/household/1/visit?errand=new_tank', 'field'], ['visit-fault', '/household/1/visit?errand=fault', 'field'],
  ['programme', '/programme', 'viewer'], ['report', '/programme/report', 'viewer'],
  ['map', '/?within=-180,-90,180,90#map', 'viewer'], ['tokens', '/setup/tokens', 'lead'], ['setup', '/setup', 'lead'], ['wording', '/setup/wording', 'lead'],
  ['broadcast', '/broadcast', 'lead'],
]
for (const lang of langs) {
  for (const width of [360, 1280]) {
    const nobody = await person(`nobody ${lang}`, width, lang)
    await look(nobody, `login-${lang}-${width}`, { status: 200, lang, response: await nobody.goto(`${url}/login`) })
    await nobody.fill('#name', 'nobody')
    await nobody.fill('#password', 'nothing')
    await nobody.click('main button')
    await look(nobody, `login-wrong-${lang}-${width}`, { lang })
    await look(nobody, `try-${lang}-${width}`, { status: 200, lang, response: await nobody.goto(`${url}/try`) })
    const at = `${url}/try?phone=%2B99900000102#end`
    await look(nobody, `try-talk-${lang}-${width}`, { status: 200, lang, response: await nobody.goto(at) })
    await nobody.context().close()
    for (const role of roles) {
      const page = await person(`${role} ${lang}`, width, lang)
      await enter(page, `${role} ${lang}`, words[`${role} ${lang}`])
      for (const [name, path, least, code = 200] of pages) {
        const status = roles.indexOf(role) >= roles.indexOf(least) ? code : 403
        const response = await page.goto(url + path)
        await look(page, `${name}-${role}-${lang}-${width}`, { status, lang, response })
      }
      if (role === 'lead') {
        await page.goto(`${url}/broadcast`)
        await page.fill('#text', 'We meet on Monday at ten under the big tree; bring what you noted.')
        await page.click('.look-first')
        await look(page, `broadcast-look-${lang}-${width}`, { lang })
        await page.goto(`${url}/setup`)
        for (const summary of await page.$$('summary')) await summary.click()
        await look(page, `setup-open-${lang}-${width}`, { lang })
        await page.fill('#h-phone', '0700')
        await page.check('[name=agreed]')
        await page.click('#household button')
        await look(page, `form-wrong-${lang}-${width}`, { lang })
      }
      if (role === 'field') {
        await page.goto(`${url}/household/1`)
        for (const summary of await page.$$('section#phones summary, section#settings summary')) await summary.click()
        await look(page, `household-open-${lang}-${width}`, { lang })
        await page.goto(`${url}/`)
        if (!(await page.$('#map .map a'))) say('no household is on the map')
      }
      await page.context().close()
    }
  }
}

// By the keyboard alone: log in, skip to the content, take a danger on, write a note, log out.
const keys = await person('keyboard', 1280, 'en')
await keys.goto(`${url}/login`)
await tabTo(keys, '#password')
await keys.goto(`${url}/login`)
await keys.keyboard.type('field en')
await keys.keyboard.press('Tab')
await keys.keyboard.type(words['field en'])
await keys.keyboard.press('Enter')
await keys.waitForURL(`${url}/`)
await tabTo(keys, '.skip', 1)
await keys.keyboard.press('Enter')
if (await tabTo(keys, '.row .act button')) {
  const name = await keys.evaluate(() => document.activeElement.closest('.row').querySelector('.who a').innerText)
  await Promise.all([keys.waitForNavigation(), keys.keyboard.press('Enter')])
  const seen = await keys.evaluate(() => document.querySelector('.hands')?.innerText ?? '')
  if (!seen.includes('field en')) say(`${name} was taken by the keyboard, and the page says: ${seen}`)
}
await keys.goto(`${url}/household/1`)
if (await tabTo(keys, '#note')) {
  await keys.keyboard.type('valve replaced')
  await Promise.all([keys.waitForNavigation(), keys.keyboard.press('Enter')])
  if (!(await keys.textContent('main')).includes('field en: valve replaced')) say('the note is not in the trail')
}
for (const wanted of ['#ration', '#what-if button', '.scroll', 'a[href$="errand=fault"]', '#settings button']) {
  await keys.goto(`${url}/household/1`)
  await tabTo(keys, wanted)
}
await keys.goto(url)
if (await tabTo(keys, 'form[action="/logout"] button')) {
  await keys.keyboard.press('Enter')
  await keys.waitForURL(`${url}/login`)
}

await browser.close()
console.log(`walked ${walked}`)
process.exit(wrong.length ? 1 : 0)
