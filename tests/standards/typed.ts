import * as ada from './ada-figures.js'
import * as aeDubai from './ae-dubai-figures.js'
import * as auAba from './au-aba-figures.js'
import * as auNcc from './au-ncc-2022-figures.js'
import * as brNbr from './br-nbr-9050-2020-figures.js'
import * as caCnib from './ca-cnib-figures.js'
import * as caCsa from './ca-csa-b651-2004-figures.js'
import * as chVaboev from './ch-vaboev-figures.js'
import * as cz398 from './cz-398-2009-figures.js'
import * as de32975 from './de-din-32975-figures.js'
import * as de32976 from './de-din-32976-figures.js'
import * as dkAssociation from './dk-association-figures.js'
import * as esTma from './es-tma-851-2021-figures.js'
import * as euTsi from './eu-tsi-prm-figures.js'
import type { ExceptionFigure, Figure } from './figure.js'
import * as kr from './kr-2020-figures.js'
import * as marburg from './marburg-medium-figures.js'
import * as nls from './nls-800-figures.js'
import * as noTek17 from './no-tek17-figures.js'
import * as a117 from './us-a117.1-2003-figures.js'
import * as adaag from './us-adaag-1991-figures.js'
import * as usCa from './us-ca-2019-figures.js'

/** The figures of each table, typed a second time from the sources. */
export const TYPED: Record<string, { FIGURES: Figure[]; EXCEPTIONS?: ExceptionFigure[] }> = {
  'us-ada-2010': ada,
  'us-adaag-1991': adaag,
  'us-a117.1-2003': a117,
  'us-ca-2019': usCa,
  'au-ncc-2022': auNcc,
  'au-aba': auAba,
  'kr-2020': kr,
  'es-tma-851-2021': esTma,
  'eu-tsi-prm': euTsi,
  'ca-cnib': caCnib,
  'ca-csa-b651-2004': caCsa,
  'no-tek17': noTek17,
  'de-din-32975': de32975,
  'de-din-32976': de32976,
  'ch-vaboev': chVaboev,
  'dk-association': dkAssociation,
  'cz-398-2009': cz398,
  'br-nbr-9050-2020': brNbr,
  'ae-dubai': aeDubai,
  'nls-800': nls,
  'marburg-medium': marburg,
}
