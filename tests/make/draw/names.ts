/** Two hundred names of rooms and ways, of our own invention: what a drawing must be made for without exception. */
export const NAMES: readonly string[] = `
Seed Library|Kiln Room 204|Glaze Lab|Wheel Room|Drying Racks|Tool Crib 3|Reading Room|Map Room 12|Rope Walk|Boat Shed
Herb Store|Quiet Room|Nursing Room|Prayer Room|First Aid|Lost Property|Cloak Room|Ticket Hall|Waiting Room B|Gate 14
Stair 2|Stair 3 Down|Exit|Exit Stair|Exit Route|Fire Exit|Lift 4|Lift Lobby|Level 7|Basement 1
Restroom|Women|Men|All Gender Restroom|Accessible Restroom|Family Restroom|Shower 5|Changing Place|Laundry|Linen
Office 101|Office 102A|Room 1|Room 22|Room 333|Room 4040|Suite 560|Studio 9|Workshop 8|Store 77
Director|Reception|Registrar|Bursar|Archive|Post Room|Print Shop|Copy Room|Server Room|Plant Room
Boiler House|Pump Room 6|Switch Room|Meter Cupboard|Cleaner|Janitor|Waste Store|Recycling|Loading Bay 2|Dock 11
Lecture Hall A|Lecture Hall B|Seminar 3C|Tutorial 4D|Language Lab|Music Room|Practice 15|Choir Room|Organ Loft|Green Room
Stage Door|Dressing Room 1|Wardrobe|Prop Store|Paint Frame|Scene Dock|Box Office|Balcony|Stalls Left|Stalls Right
Gallery 1|Gallery 10|East Gallery|West Wing|North Stair|South Stair|Courtyard|Roof Garden|Orangery|Fernery
Fossil Room|Insect House|Aquarium|Bird Hide|Observatory|Dome|Planetarium|Weather Station|Tide Tables|Chart Room
X-Ray 2|Ward 6|Ward 16 West|Clinic 9|Day Surgery|Theatre 4|Recovery|Triage|Pharmacy|Phlebotomy
Physiotherapy|Hydrotherapy|Occupational Therapy|Speech Therapy|Eye Clinic|Hearing Aids|Dental 3|Dispensary|Chapel|Mortuary
Kitchen|Servery|Dining Hall|Cafe|Bakery|Cold Store|Dry Goods|Dishwash|Bar|Cellar
Pool|Sauna|Steam Room|Gym 2|Squash 1|Squash 2|Judo Hall|Climbing Wall|Ski Room|Boot Room
Nursery|Baby Room|Toddlers|Art Room|Science 7|Physics Lab|Chemistry Lab 21|Biology 8|Greenhouse|Potting Shed
Court 1|Jury Room|Judge|Witness Suite|Advocates|Interview 4|Consultation 2|Vestry|Crypt|Belfry
Bus Bay 3|Platform 9|Platform 10 West|Taxi Rank|Cycle Store|Car Park B|Pay Station|Bridge Deck|Ferry Gate|Customs
Meeting 5|Board Room|Think Tank|Training 6|Project Space|Wellness Room|Phone Booth 2|Sorting Office|Mail Drop|Help Desk
Quarry Office|Jewel Vault|Zinc Store|Vinyl Archive|Waxworks|Yoga Loft|Quilt Room|Jigsaw Club|Fjord Room|Oxbow Suite
`
  .trim()
  .split(/[|\n]/u)
