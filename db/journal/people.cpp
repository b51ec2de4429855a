// Who is whom, and who may sit down as what: the part of Memory that follows joins and roles.
#include <algorithm>

#include "db/journal/memory.h"

namespace wm::db {
namespace {

bool known_at(const Entry& entry, std::optional<Instant> known) {
  if (!known) return !entry.voided;
  return entry.recorded <= *known && (!entry.voided || *known < *entry.voided);
}

}  // namespace

PersonId Memory::joined(const PersonId& id, std::optional<Instant> known) const {
  // In order of entry, each join hangs what `other` counts for by then under what `keep` counts for.
  std::map<PersonId, PersonId> parent;
  const auto root = [&](PersonId p) {
    for (auto i = parent.find(p); i != parent.end(); i = parent.find(p)) p = i->second;
    return p;
  };
  for (const std::size_t i : of_kind("join")) {
    if (!known_at(entries_[i], known)) continue;
    const auto* join = as<Join>(entries_[i].fact);
    const PersonId keep = root(join->keep), other = root(join->other);
    if (keep != other) parent[other] = keep;
  }
  return root(id);
}

std::vector<PersonId> Memory::aliases(const PersonId& id) const {
  std::vector<PersonId> all = {id};
  if (of_kind("join").empty()) return all;
  const PersonId root = joined(id);
  for (const std::size_t i : of_kind("join")) {
    const auto* join = as<Join>(entries_[i].fact);
    for (const PersonId& one : {join->keep, join->other})
      if (std::find(all.begin(), all.end(), one) == all.end() && joined(one) == root) all.push_back(one);
  }
  return all;
}

std::optional<Role> Memory::role(const PersonId& id, Instant t, std::optional<Instant> known) const {
  const PersonId root = joined(id, known);
  const Entry* latest = nullptr;
  for (const std::size_t i : of_kind("role")) {
    const Entry& entry = entries_[i];
    const bool counts =
        known ? entry.recorded <= *known && !(entry.voided && *entry.voided <= *known) : !entry.voided;
    if (!counts || entry.at > t || (latest != nullptr && entry.at < latest->at)) continue;
    if (joined(as<RoleGiven>(entry.fact)->person, known) == root) latest = &entry;
  }
  return latest == nullptr ? std::nullopt : as<RoleGiven>(latest->fact)->role;
}

std::vector<PersonId> Memory::managers(Instant t) const {
  std::map<PersonId, const Entry*> latest;
  for (const std::size_t i : of_kind("role")) {
    const Entry& entry = entries_[i];
    if (entry.voided || entry.at > t) continue;
    const Entry*& last = latest[joined(as<RoleGiven>(entry.fact)->person)];
    if (last == nullptr || last->at <= entry.at) last = &entry;
  }
  std::vector<PersonId> found;
  for (const auto& [person, entry] : latest)
    if (as<RoleGiven>(entry->fact)->role == Role::manager) found.push_back(person);
  return found;
}

std::string Memory::name(const PersonId& id) const {
  const Person* p = person(id);
  if (p == nullptr) return "'" + id + "'";
  const std::string& first = p->nickname.empty() ? p->given : p->nickname;
  if (first.empty() && p->family.empty()) return "a person whose details are blanked";
  return first.empty() || p->family.empty() ? first + p->family : first + " " + p->family;
}

}  // namespace wm::db
