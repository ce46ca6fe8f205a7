import type { Manual } from '../../model/manual.ts'
import type { RenderAssets } from '../assets.ts'
import { drawingFigure } from '../drawings/drawing-figure.ts'
import { type Drawings, drawingNamed, renderDrawings } from '../drawings/drawings.ts'
import { html } from '../text/html.ts'
import { createTemplates } from '../text/templates.ts'
import { bySignal, cautionView } from '../views/caution-view.ts'
import type { DrawingPrinter } from '../views/drawing-places.ts'
import { emergencyView } from '../views/emergency-view.ts'
import { facilityView } from '../views/facility-view.ts'
import { figureView } from '../views/figure-view.ts'
import { findingsView } from '../views/findings-view.ts'
import { hazardsView } from '../views/hazards-view.ts'
import { createPen, type Pen } from '../views/pen.ts'
import { plansView } from '../views/plans-view.ts'
import { procedureView } from '../views/procedure-view.ts'
import { reckonerView } from '../views/reckoner-view.ts'
import { signalView } from '../views/signal-view.ts'
import { symptomsView } from '../views/symptoms-view.ts'
import { trainingView } from '../views/training-view.ts'
import { worksheetView } from '../views/worksheet-view.ts'

export type SiteFile = { readonly path: string; readonly data: string }

/** Links of pages at the top of the site, and of pages one folder down. */
const penFor = (manual: Manual, words: RenderAssets['words'], up: string): Pen => {
  const ids = new Set(manual.procedures.map((p) => p.id))
  return createPen(manual, words, 'screen', {
    worksheetHref: (id) => `${up}worksheets/${id}.html`,
    procedureHref: (id) => (ids.has(id) ? `${up}procedures/${id}.html` : undefined),
  })
}

type Page = {
  readonly path: string
  readonly template: string
  readonly title: string
  readonly part: string /** Worked out only when the page is wanted. */
  readonly data: () => object
}

function topPages(manual: Manual, words: RenderAssets['words'], drawings: Drawings): Page[] {
  const pen = penFor(manual, words, '')
  const plan = drawings.plan
  const sections = manual.sections.map((s) => ({
    id: s.id,
    title: s.title,
    about: pen.line(s.about),
    procedures: manual.procedures
      .filter((p) => p.section === s.id)
      .map((p) => ({ id: p.id, title: p.title, purpose: pen.line(p.purpose) })),
  }))
  const symptoms = symptomsView(manual, pen)
  const byUse = () =>
    manual.worksheets.map((sheet) => ({
      id: sheet.id,
      number: sheet.number,
      title: sheet.title,
      figures: sheet.outputs.map((o) => figureView(o.id, pen)),
    }))
  return [
    {
      path: 'index.html',
      template: 'site/index',
      title: manual.facility.name,
      part: 'home',
      data: () => ({
        urgent: sections.find((s) => s.id === 'emergency')?.procedures ?? [],
        sections,
        symptoms,
        plan: plan ? drawingFigure(plan, 'screen') : html(''),
      }),
    },
    {
      path: 'symptoms.html',
      template: 'site/symptoms',
      title: words.symptoms.title,
      part: 'see',
      data: () => ({ symptoms }),
    },
    {
      path: 'procedures.html',
      template: 'site/procedures',
      title: words.site.do,
      part: 'do',
      data: () => ({ sections }),
    },
    {
      path: 'numbers.html',
      template: 'site/numbers',
      title: words.site.numbers,
      part: 'numbers',
      data: () => ({ sheets: byUse() }),
    },
    {
      path: 'reckoners.html',
      template: 'site/reckoners',
      title: words.site.reckoners,
      part: 'numbers',
      data: () => ({ reckoners: manual.reckoners.map((r) => reckonerView(r, pen)) }),
    },
    {
      path: 'plans.html',
      template: 'site/plans',
      title: words.plans.title,
      part: 'plan',
      data: () => ({ plans: manual.plans }),
    },
    {
      path: 'safety.html',
      template: 'site/safety',
      title: words.safety.title,
      part: 'safety',
      data: () => ({
        signals: signalView(pen),
        cautions: [...manual.cautions].sort(bySignal).map((c) => cautionView(c, pen)),
        at: facilityView(manual, pen),
      }),
    },
    {
      path: 'emergency.html',
      template: 'site/emergency',
      title: words.emergency.title,
      part: 'safety',
      data: () => ({ emergency: emergencyView(pen, 'screen') }),
    },
    {
      path: 'hazards.html',
      template: 'site/hazards',
      title: words.safety.hazards,
      part: 'safety',
      data: () => ({ hazards: hazardsView(manual, pen) }),
    },
    {
      path: 'learn.html',
      template: 'site/learn',
      title: words.training.title,
      part: 'learn',
      data: () => ({ training: trainingView(manual, pen) }),
    },
    {
      path: 'findings.html',
      template: 'site/findings',
      title: words.findings.title,
      part: 'board',
      data: () => ({ findings: findingsView(manual, pen) }),
    },
    {
      path: 'facility.html',
      template: 'site/facility',
      title: words.facility.title,
      part: 'facility',
      data: () => ({
        at: facilityView(manual, pen),
        plan: plan ? drawingFigure(plan, 'screen') : html(''),
        sections: [drawings['section-straight'], drawings['section-turn']]
          .flatMap((d) => d ?? [])
          .map((d) => drawingFigure(d, 'screen')),
      }),
    },
    {
      path: 'terms.html',
      template: 'site/terms',
      title: words.site.more,
      part: 'more',
      data: () => ({
        chapters: manual.chapters.map((c) => ({
          id: c.id,
          title: c.title,
          text: pen.block(c.text),
        })),
        terms: manual.terms.map((t) => ({ term: t.term, means: pen.line(t.means) })),
        sources: manual.sources,
      }),
    },
  ]
}

/** Prints each drawing of a page once. */
function drawOnce(drawings: Drawings): DrawingPrinter {
  const shown = new Set<string>()
  return (id) => {
    const drawing = id === undefined || shown.has(id) ? undefined : drawingNamed(drawings, id)
    if (id !== undefined) shown.add(id)
    return drawing ? drawingFigure(drawing, 'screen') : html('')
  }
}

function lowerPages(manual: Manual, words: RenderAssets['words'], drawings: Drawings): Page[] {
  const pen = penFor(manual, words, '../')
  const procedures = manual.procedures.map((p): Page => {
    return {
      path: `procedures/${p.id}.html`,
      template: 'site/procedure',
      title: p.title,
      part: 'do',
      data: () => procedureView(p, pen, (m) => `#${m}`, drawOnce(drawings)),
    }
  })
  const worksheets = manual.worksheets.map(
    (w): Page => ({
      path: `worksheets/${w.id}.html`,
      template: 'site/worksheet',
      title: w.title,
      part: 'numbers',
      data: () => worksheetView(w, pen),
    }),
  )
  const plans = manual.plans.map(
    (plan, i): Page => ({
      path: `plans/${plan.id}.html`,
      template: 'site/plan',
      title: plan.title,
      part: 'plan',
      data: () => ({ plan: plansView(manual, pen, drawings, 'screen')[i], scrolls: true }),
    }),
  )
  return [...procedures, ...plans, ...worksheets]
}

/**
 * All pages of the site and its style sheet, each made when it is asked for. Links are relative,
 * nothing is fetched from elsewhere, no script is needed.
 */
export function sitePages(manual: Manual, assets: RenderAssets): ReadonlyMap<string, () => string> {
  const { words } = assets
  const templates = createTemplates(assets.templates)
  const drawings = renderDrawings(manual, words)
  const menu = (
    ['see', 'do', 'plan', 'numbers', 'safety', 'learn', 'board', 'facility', 'more'] as const
  ).map((part) => ({
    part,
    title: words.site[part],
    page:
      {
        see: 'symptoms',
        do: 'procedures',
        plan: 'plans',
        numbers: 'numbers',
        safety: 'safety',
        learn: 'learn',
        board: 'findings',
        facility: 'facility',
        more: 'terms',
      }[part] ?? part,
  }))
  const pages = [...topPages(manual, words, drawings), ...lowerPages(manual, words, drawings)].map(
    (page): [string, () => string] => [
      page.path,
      () => {
        const up = page.path.includes('/') ? '../' : ''
        // Headings of shared parts stand one level below the page's own.
        const shared = {
          sub: 'h2',
          words,
          facility: manual.facility,
          date: manual.date,
          up,
          title: page.title,
          material: words.materials[manual.facility.material],
        }
        const body = templates.render(page.template, {
          ...page.data(),
          ...shared,
          name: page.title,
        })
        return templates.render('site/page', {
          ...shared,
          home: page.part === 'home',
          menu: menu.map((m) => ({ ...m, here: m.part === page.part })),
          body: html(body),
        })
      },
    ],
  )
  return new Map([
    ...pages,
    [
      'assets/site.css',
      () =>
        [
          assets.fontCss,
          assets.styles['shared'],
          assets.styles['emergency'],
          assets.styles['site'],
        ].join('\n'),
    ],
  ])
}

/** The whole site at once. */
export const renderSite = (manual: Manual, assets: RenderAssets): readonly SiteFile[] =>
  [...sitePages(manual, assets)].map(([path, make]) => ({ path, data: make() }))
