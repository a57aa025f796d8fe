/**
 * When crops are sown and how long they are picked, a row of the crop table a line:
 *
 * crop | hardiness | sown again for autumn | weeks under cover before it is set out | how it is picked
 *
 * Hardiness decides the days about the frosts (`HARDINESS`); "autumn" is set at the first frost and stands over winter.
 * Picked "once" it is gone when all of it is ripe; a number is so many weeks of picking from when the first is ready; "frost"
 * is picked until the first frost; "stays" stands from year to year.
 */
export const SOWING_ROWS = `
tomato | very-tender | no | 7 | frost
pepper | very-tender | no | 9 | frost
eggplant | very-tender | no | 9 | frost
potato | semi-hardy | no | - | once
bean-bush | tender | no | - | 3
bean-pole | tender | no | - | frost
bean-lima | very-tender | no | - | 4
pea | hardy | yes | - | 2
corn-sweet | tender | no | - | once
cucumber | tender | no | 3 | 6
squash-summer | tender | no | 3 | frost
squash-winter | very-tender | no | 3 | once
pumpkin | very-tender | no | 3 | once
cantaloupe | very-tender | no | 4 | 3
watermelon | very-tender | no | 4 | 2
carrot | semi-hardy | yes | - | once
beet | semi-hardy | yes | - | once
radish | hardy | yes | - | once
turnip | hardy | yes | - | once
rutabaga | hardy | yes | - | once
parsnip | semi-hardy | no | - | once
onion-bulb | hardy | no | 9 | once
onion-green | hardy | yes | 7 | once
garlic | autumn | no | - | once
leek | hardy | no | 10 | once
lettuce-leaf | hardy | yes | 4 | 2
lettuce-head | hardy | yes | 4 | once
spinach | hardy | yes | - | 2
chard | semi-hardy | no | 5 | frost
kale | hardy | yes | 5 | frost
collards | hardy | yes | 5 | frost
mustard | hardy | yes | - | 2
arugula | hardy | yes | - | 2
cabbage | hardy | yes | 6 | once
cabbage-chinese | semi-hardy | yes | 4 | once
broccoli | hardy | yes | 6 | 3
cauliflower | semi-hardy | yes | 6 | once
brussels-sprouts | hardy | no | 6 | frost
kohlrabi | hardy | yes | 5 | once
celery | tender | no | 11 | once
okra | very-tender | no | - | frost
sweet-potato | very-tender | no | 6 | once
asparagus | hardy | no | - | stays
strawberry | hardy | no | - | stays
basil | very-tender | no | 6 | frost
parsley | semi-hardy | no | 9 | frost
cilantro | semi-hardy | yes | - | 2
dill | semi-hardy | no | - | 4
fennel | semi-hardy | yes | - | once
chives | hardy | no | 8 | stays
thyme | semi-hardy | no | 9 | stays
oregano | semi-hardy | no | 9 | stays
sage | semi-hardy | no | 7 | stays
rosemary | tender | no | 10 | stays
mint | hardy | no | - | stays
`;
