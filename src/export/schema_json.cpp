// SPDX-License-Identifier: MIT
#include "export/schema_json.h"

#include <nlohmann/json.hpp>

#include "export/json_text.h"

namespace dunnage {
namespace {

using Json = nlohmann::ordered_json;

Json object_of(const std::vector<Key>& keys);

Json text_of(const Key& key) {
  Json out = {{"type", "string"}};
  if (!key.words.empty()) out["enum"] = key.words;
  return out;
}

Json number_of(const Key& key, const char* type) {
  Json out = {{"type", type}};
  if (key.low) out["minimum"] = *key.low;
  if (key.high) out["maximum"] = *key.high;
  return out;
}

Json list_of(Json entry) { return {{"type", "array"}, {"items", std::move(entry)}}; }

Json sections_of(const Key& key) {
  const Json list = list_of(object_of(key.inner));
  Json any = Json::array();
  if (!key.words.empty()) any.push_back({{"type", "string"}, {"enum", key.words}});
  if (key.or_list) any.push_back(object_of(key.inner));
  if (any.empty()) return list;
  any.push_back(list);
  return {{"anyOf", any}};
}

Json value_of(const Key& key) {
  if (key.kind == "section") return object_of(key.inner);
  if (key.kind == "list of sections") return sections_of(key);
  if (key.kind == "list of texts") return list_of(text_of(key));
  if (key.kind == "texts by language") return {{"type", "object"}, {"additionalProperties", {{"type", "string"}}}};
  if (key.kind == "true or false") return {{"type", "boolean"}};
  if (key.kind == "whole number") return number_of(key, "integer");
  if (key.kind == "number") return number_of(key, "number");
  if (key.kind == "date") return {{"type", "string"}, {"format", "date"}};
  if (key.kind.empty()) return Json::object();
  return text_of(key);
}

Json described(const Key& key) {
  Json value = value_of(key);
  if (key.or_list && key.kind != "list of sections") value = {{"anyOf", {value, list_of(value)}}};
  Json out = Json::object();
  if (!key.kind.empty()) out["description"] = key.kind;
  out.update(value);
  return out;
}

Json object_of(const std::vector<Key>& keys) {
  Json properties = Json::object(), required = Json::array();
  for (const Key& key : keys) {
    properties[key.name] = described(key);
    if (key.needed) required.push_back(key.name);
  }
  Json out = {{"type", "object"}, {"properties", properties}, {"additionalProperties", false}};
  if (!required.empty()) out["required"] = required;
  return out;
}

}  // namespace

std::string schema_json(const std::string& title, const std::vector<Key>& keys) {
  Json out = {{"$schema", "http://json-schema.org/draft-07/schema#"}, {"title", title}};
  out.update(object_of(keys));
  return json_text(out);
}

}  // namespace dunnage
