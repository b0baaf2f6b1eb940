// The worker in which chains are solved and their water is worked out, so that the page keeps answering. Leaves out when it is asked.
import { expose } from 'comlink'
import { shelfHumidity } from '../../planning/shelf-humidity.ts'
import { answered } from './answered.ts'
import type { ChainApi } from './chain-api.ts'

const api: ChainApi = {
  humidity: (question) => answered(() => shelfHumidity(question)),
}

expose(api)
