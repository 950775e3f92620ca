import { listenForDrops } from './drop.js'
import { filterAsTyped } from './filter.js'
import { linkPlaces } from './places.js'
import { watchProgress } from './progress.js'

/** What a browser with scripts does more. Everything on the pages works without it. */

listenForDrops()
watchProgress()
filterAsTyped()
linkPlaces()
document.getElementById('errors')?.focus()
